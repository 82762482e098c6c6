// What to say instead of words that are known but stand where they cannot.
#pragma once

#include <string>

#include "core/trade/call_line/grammar.hpp"
#include "core/trade/call_line/line_builder.hpp"
#include "core/trade/call_line/term.hpp"

namespace evenclaw {

/// A term that cannot stand here, and what was said before it.
struct Misplacement {
  const Term& term;
  Spot spot;
  const LineBuilder& said;
};

/// What to do about the term; "" when there is nothing to propose. Words to be said stand in braces
/// (quoted_words.hpp).
std::string remedy_for(const Misplacement& here);

/// What is meant by a time behind "wrap off": one that is put on and comes off then. "" when
/// something else was said last.
std::string remedy_for_time_of_off(const LineBuilder& said);

}  // namespace evenclaw
