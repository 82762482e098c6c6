// What to say instead of words that are known but stand where they cannot.
#pragma once

#include <string>

#include "core/trade/call_line/grammar.hpp"
#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/lexer.hpp"
#include "core/trade/call_line/line_builder.hpp"
#include "core/trade/call_line/open_item.hpp"
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

/// "Healed", "gone": of a lesion of last time.
bool tells_it_is_gone(const Term& term);

struct NumberAlone {
  std::span<const Token> tokens;
  std::size_t at;
  std::string_view text;
  const LineBuilder& said;  // before it
  const Language& language;
};

/// Why the number at `at` cannot be a cow: a dash alone parts it from the number before, and those
/// between the two may be meant as well.
std::optional<Refusal> why_no_range(std::span<const Token> tokens, std::size_t at,
                                    std::string_view text);

/// Of a number that can stand for nothing where it stands: the next cow, a time of which nobody
/// said what is to happen then, a length of nothing.
Refusal refusal_of_number(const NumberAlone& here);

}  // namespace evenclaw
