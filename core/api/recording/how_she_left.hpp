// How a cow left the herd, in the word that was said: who was sold did not die.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/trade/call_line/language.hpp"

namespace evenclaw {

/// What the line says of how the cow of that number left, as the table spells it: "sold"; who is
/// dead died. "" when it says no more than that she is gone, or nothing of it.
std::string how_she_left(std::string_view line, const std::string& number,
                         const Language& language);

/// Every time the line says that the cow of that number left, in order: how, or "" for "gone".
std::vector<std::string> ways_she_left(std::string_view line, const std::string& number,
                                       const Language& language);

}  // namespace evenclaw
