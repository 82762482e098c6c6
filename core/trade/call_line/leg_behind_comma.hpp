// "Lame, LH": the leg behind a comma is the one she is lame on, and the foot spoken of next.
#pragma once

#include <span>

#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/lexer.hpp"
#include "core/trade/call_line/line.hpp"
#include "core/trade/call_line/line_builder.hpp"

namespace evenclaw {

/// Adds to "lame" without a leg the feet that stand right behind it and a comma, when a separator
/// or the end of the line follows: nothing is said of them there. `placed` are the clauses of the
/// line.
void add_leg_behind_comma(Line& line, std::span<const PlacedClause> placed,
                          std::span<const Token> tokens, const Language& language);

}  // namespace evenclaw
