// How feet, claws and days are named to people, in the words of the trade.
#pragma once

#include <string>
#include <string_view>

#include "core/base/date.hpp"
#include "core/trade/foot.hpp"

namespace evenclaw {

/// "left hind".
std::string_view spoken(Foot foot);

/// "left hind", "both hinds", "left front and right hind", "all four feet"; "" of none.
std::string spoken(const FootSet& feet);

/// "outside", "inside", "both"; "" where no claw makes sense or none was called.
std::string_view spoken(Claw claw);

/// "3 Sep", for days of the last months; the year is not said.
std::string spoken(Day day);

/// "Thu 3 Sep".
std::string spoken_with_weekday(Day day);

/// The text with its first letter as a capital, for the start of a sentence (ASCII letters).
std::string sentence(std::string text);

}  // namespace evenclaw
