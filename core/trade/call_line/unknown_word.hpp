// What is told of a word that is none of the language: what was expected, and what may be meant.
#pragma once

#include <cstddef>
#include <span>
#include <string_view>

#include "core/trade/call_line/grammar.hpp"
#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/lexer.hpp"
#include "core/trade/call_line/line_builder.hpp"

namespace evenclaw {

struct UnknownWord {
  std::span<const Token> tokens;
  std::string_view text;
  std::size_t at;         // the token that is not known
  std::size_t last_term;  // the first token of what was taken before it
  Spot spot;
  Spot spot_before;  // before that was taken
};

/// The refusal, at the words it is told of: with those before when together they are nearer to
/// something known ("sole ulsr"), with the fillers that follow ("has a"). A word that only joins is
/// to be left out and never taken for a slip, unless of a phrase with the word behind it.
PlacedFault refusal_of(const UnknownWord& word, const Language& language);

}  // namespace evenclaw
