// A line nobody could read that names no number, said while nobody is in the crush: what it is
// asked about by when the visit closes.
#pragma once

#include <string>
#include <string_view>

#include "core/trade/call_line/language.hpp"

namespace evenclaw {

/// Of whom it may be, in its own words: those in front of what is told, "red cow" of "red cow wrap
/// off", at most three.
std::string whom_it_may_be_of(std::string_view text, const Language& language);

/// A word in it is one of the call line's and more than a joining word. What holds none was hardly
/// called beside a crush.
bool holds_a_call_word(std::string_view text, const Language& language);

}  // namespace evenclaw
