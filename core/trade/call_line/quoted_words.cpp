#include "core/trade/call_line/quoted_words.hpp"

#include <optional>
#include <vector>

namespace evenclaw {

namespace {

struct Said {
  std::string words;
  std::size_t token_count = 1;
};

std::optional<Said> said_in(const Language& language, const std::vector<Token>& tokens,
                            std::size_t at) {
  const Language::Match match = english().longest_match(tokens, at);
  if (match.phrase != nullptr) {
    return Said{std::string(language.say_as(*match.phrase)), match.word_count};
  }
  const auto zone = english().zone_in(tokens[at].folded);
  if (!zone) return std::nullopt;
  return Said{std::string(language.say(TermKind::zone_word)) + std::to_string(*zone)};
}

std::optional<std::string> in_words_of(const Language& language, std::string_view line) {
  const std::vector<Token> tokens = tokens_of(line);
  std::string text;
  std::size_t copied = 0;
  std::size_t at = 0;
  while (at < tokens.size()) {
    if (tokens[at].kind != TokenKind::word) {
      ++at;
      continue;
    }
    const std::optional<Said> said = said_in(language, tokens, at);
    if (!said) return std::nullopt;
    const Token& last = tokens[at + said->token_count - 1];
    text += std::string(line.substr(copied, tokens[at].offset - copied)) + said->words;
    copied = last.offset + last.length;
    at += said->token_count;
  }
  return text + std::string(line.substr(copied));
}

}  // namespace

// Sentences are written in English so far, and so is what they quote: there it stays as written.
std::string with_quoted_words(std::string_view sentence, const Language& language) {
  std::string told;
  for (;;) {
    const std::size_t open = sentence.find('{');
    const std::size_t close = sentence.find('}', open);
    if (open == std::string_view::npos || close == std::string_view::npos) break;
    const std::string_view line = sentence.substr(open + 1, close - open - 1);
    const std::optional<std::string> words = in_words_of(language, line);
    told += sentence.substr(0, open);
    if (!words) {
      told += sentence.substr(open, close + 1 - open);
    } else {
      told += &language == &english() ? std::string(line) : *words;
    }
    sentence.remove_prefix(close + 1);
  }
  return told + std::string(sentence);
}

}  // namespace evenclaw
