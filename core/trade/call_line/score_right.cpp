#include "core/trade/call_line/score_right.hpp"

#include <optional>

#include "core/base/text.hpp"
#include "core/trade/mobility.hpp"

namespace evenclaw {

namespace {

std::optional<int> one_digit(const Token& token, std::string_view text) {
  if (token.kind != TokenKind::number) return std::nullopt;
  return whole_number(token.folded.empty() ? text.substr(token.offset, token.length)
                                           : std::string_view(token.folded),
                      1);
}

}  // namespace

bool is_score(std::span<const Token> tokens, std::size_t at, std::string_view text,
              const Language& language) {
  if (at >= tokens.size() || !one_digit(tokens[at], text)) return false;
  const Language::Match of = language.longest_match(tokens, at + 1);
  const bool is_out_of = of.phrase != nullptr && of.phrase->kind == TermKind::out_of;
  const bool is_slash =
      at + 1 < tokens.size() && text.substr(tokens[at + 1].offset, tokens[at + 1].length) == "/";
  const std::size_t highest = at + 1 + (is_out_of ? of.word_count : 1);
  if ((!is_out_of && !is_slash) || highest >= tokens.size()) return false;
  const std::optional<int> most = one_digit(tokens[highest], text);
  return most && scale_up_to(*most).has_value();
}

}  // namespace evenclaw
