// A day as people read it.
#pragma once

#include <string>

#include "core/base/date.hpp"

namespace evenclaw {

/// "Thu 26 Nov"; with the year behind it when that is not the year of `near`.
std::string said_day(Day day, Day near);

}  // namespace evenclaw
