#include "core/api/recording/how_she_left.hpp"

#include <algorithm>
#include <cstddef>

#include "core/api/recording/two_cows.hpp"
#include "core/base/text.hpp"
#include "core/trade/call_line/lexer.hpp"
#include "core/trade/call_line/spoken_tokens.hpp"
#include "core/trade/identity.hpp"
#include "core/trade/task.hpp"

namespace evenclaw {

std::string how_she_left(std::string_view line, const std::string& number,
                         const Language& language) {
  if (!is_utf8(line)) return {};
  for (const std::string& way : ways_she_left(line, number, language)) {
    if (!way.empty()) return way;
  }
  const std::string hers = told_of_one(line, number, language);
  const std::vector<Token> tokens = spoken_tokens(hers, language);
  for (std::size_t at = 0; at < tokens.size();) {
    const Language::Match match = language.longest_match(tokens, at);
    const bool tells_how = match.phrase != nullptr && match.phrase->kind == TermKind::news &&
                           static_cast<News>(match.phrase->value) == News::gone;
    if (tells_how) return std::string(language.alike_to(match.phrase->words));
    at += std::max<std::size_t>(match.word_count, 1);
  }
  return {};
}

std::vector<std::string> ways_she_left(std::string_view line, const std::string& number,
                                       const Language& language) {
  std::vector<std::string> ways;
  if (!is_utf8(line)) return ways;
  const std::vector<Token> tokens = spoken_tokens(line, language);
  bool is_of_her = false;
  bool is_told = false;  // of the numbers named last
  for (std::size_t at = 0; at < tokens.size();) {
    const Language::Match match = language.longest_match(tokens, at);
    if (match.phrase == nullptr && tokens[at].kind == TokenKind::number) {
      const std::string_view said = line.substr(tokens[at].offset, tokens[at].length);
      const bool is_hers = plain_number(tokens[at].folded.empty() ? said : tokens[at].folded) ==
                           plain_number(number);
      is_of_her = is_hers || (is_of_her && !is_told);
      is_told = false;
    }
    const bool tells = match.phrase != nullptr && (match.phrase->kind == TermKind::news ||
                                                   match.phrase->kind == TermKind::gone);
    const bool left = tells && static_cast<News>(match.phrase->value) == News::gone;
    if (left && is_of_her) {
      const bool tells_how = match.phrase->kind == TermKind::news;
      ways.emplace_back(tells_how ? language.alike_to(match.phrase->words) : std::string_view());
    }
    is_told = is_told || match.phrase != nullptr;
    at += std::max<std::size_t>(match.word_count, 1);
  }
  return ways;
}

}  // namespace evenclaw
