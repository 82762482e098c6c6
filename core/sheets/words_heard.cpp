#include "core/sheets/words_heard.hpp"

#include <algorithm>
#include <cstddef>

#include "core/base/edit_distance.hpp"
#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/lexer.hpp"

namespace evenclaw {

namespace {

bool holds_word(const std::string& phrase, std::string_view word) {
  for (std::size_t at = phrase.find(word); at != std::string::npos;
       at = phrase.find(word, at + 1)) {
    const std::size_t end = at + word.size();
    const bool is_start = at == 0 || phrase[at - 1] == ' ';
    if (is_start && (end == phrase.size() || phrase[end] == ' ')) return true;
  }
  return false;
}

}  // namespace

std::vector<std::string> heard_words(std::string_view said) {
  std::string bare(said);
  std::replace(bare.begin(), bare.end(), '"', ' ');
  std::vector<std::string> words;
  for (const Token& token : tokens_of(bare)) {
    const bool is_word = token.kind == TokenKind::word;
    words.push_back(is_word ? token.folded : bare.substr(token.offset, token.length));
  }
  return words;
}

bool is_word_of_the_call(std::string_view folded) {
  for (const CallLanguage& each : call_languages()) {
    const Language& language = each.words();
    if (language.fills(folded)) return true;
    for (std::size_t i = 0; i < language.phrases().size(); ++i) {
      if (holds_word(language.folded(i), folded)) return true;
    }
  }
  return false;
}

bool is_slip_of(const std::string& said, const std::string& known) {
  constexpr std::size_t shortest = 5;
  constexpr std::size_t letters_a_slip = 4;
  const std::size_t letters = std::min(said.size(), known.size());
  if (letters < shortest || said.front() != known.front() || said == known) return false;
  if (known.size() == shortest && said.size() == shortest) return false;
  return edit_distance(said, known) <= letters / letters_a_slip && !is_word_of_the_call(said);
}

bool holds_phrase(const std::vector<std::string>& said, std::string_view phrase) {
  const std::vector<std::string> words = heard_words(phrase);
  if (words.empty()) return false;
  const auto is_heard = [](const std::string& one, const std::string& known) {
    return one == known || is_slip_of(one, known);
  };
  return std::search(said.begin(), said.end(), words.begin(), words.end(), is_heard) != said.end();
}

}  // namespace evenclaw
