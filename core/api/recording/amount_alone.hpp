// "3d", "42 mm" and nothing else: a number with its unit, of which nobody said what it is of.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/turn_clause.hpp"

namespace evenclaw {

/// True for a line that holds a number with its unit and nothing else.
bool is_amount_alone(std::string_view line, const Language& language);

/// The line that is an amount alone is said again by one that holds it: the number, and that unit
/// right behind it. A time is within a withdrawal that is told to be as long or longer.
bool holds_the_amount(std::string_view amount, std::string_view now, const Language& language);

/// "3d" right behind "wrap", which waits for the day it comes off: the line it stands for, "wrap
/// on, off 3d". Nothing for any other line, or where something else was said last.
std::optional<std::string> off_of_the_last(std::string_view line, const TurnDraft& draft,
                                           const Language& language);

}  // namespace evenclaw
