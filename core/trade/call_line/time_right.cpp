#include "core/trade/call_line/time_right.hpp"

#include <algorithm>
#include <cstddef>
#include <iterator>

#include "core/trade/call_line/trap.hpp"

namespace evenclaw {

namespace {

template <std::size_t count>
bool is_one_of(const TermKind (&kinds)[count], TermKind kind) {
  return std::find(std::begin(kinds), std::end(kinds), kind) != std::end(kinds);
}

}  // namespace

bool has_its_time(const Term& word, std::span<const Token> tokens, const Language& language) {
  constexpr TermKind acts[] = {TermKind::wrap_act, TermKind::block_act, TermKind::see_again,
                               TermKind::watch, TermKind::withheld_act};
  constexpr TermKind between[] = {TermKind::off, TermKind::time_in, TermKind::till, TermKind::claw};
  constexpr TermKind times[] = {TermKind::weekday, TermKind::days_word};
  if (!is_one_of(acts, word.kind)) return true;
  std::size_t at = word.first_token + word.token_count;
  while (at < tokens.size()) {
    const TokenKind mark = tokens[at].kind;
    if (mark == TokenKind::number) return has_its_unit(tokens, at, language);
    if (mark == TokenKind::date) return true;
    const Language::Match match = language.longest_match(tokens, at);
    if (match.phrase != nullptr && is_one_of(times, match.phrase->kind)) return true;
    const bool goes_on =
        mark == TokenKind::comma ||
        (match.phrase != nullptr && is_one_of(between, match.phrase->kind)) ||
        (mark == TokenKind::word && language.claw_in_short(tokens[at].folded).has_value());
    if (!goes_on) return false;
    at += std::max<std::size_t>(match.word_count, 1);
  }
  return false;
}

}  // namespace evenclaw
