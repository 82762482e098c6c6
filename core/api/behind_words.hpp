// Where a line goes on behind the commas, or the feet, that stand in it at a place.
#pragma once

#include <cstddef>
#include <span>

#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/lexer.hpp"

namespace evenclaw {

inline std::size_t behind_commas(std::span<const Token> tokens, std::size_t at) {
  while (at < tokens.size() && tokens[at].kind == TokenKind::comma) ++at;
  return at;
}

/// "LH", "both hinds", "LH and RH"; `from` itself when no foot stands there.
inline std::size_t behind_feet(std::span<const Token> tokens, std::size_t from,
                               const Language& language) {
  std::size_t at = from;
  while (at < tokens.size()) {
    const Language::Match match = language.longest_match(tokens, at);
    if (match.phrase == nullptr) break;
    const TermKind kind = match.phrase->kind;
    const bool joins = at > from && kind == TermKind::conjunction;
    if (!joins && kind != TermKind::foot && kind != TermKind::feet) break;
    at += match.word_count;
  }
  return at;
}

}  // namespace evenclaw
