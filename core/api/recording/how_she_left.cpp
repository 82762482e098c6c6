#include "core/api/recording/how_she_left.hpp"

#include <algorithm>
#include <cstddef>
#include <vector>

#include "core/api/recording/two_cows.hpp"
#include "core/base/text.hpp"
#include "core/trade/call_line/lexer.hpp"
#include "core/trade/call_line/spoken_tokens.hpp"
#include "core/trade/task.hpp"

namespace evenclaw {

std::string how_she_left(std::string_view line, const std::string& number,
                         const Language& language) {
  if (!is_utf8(line)) return {};
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

}  // namespace evenclaw
