// Round numbers along an axis.
#pragma once

#include <string>
#include <vector>

#include "core/paper/chart.hpp"

namespace evenclaw {

struct Tick {
  double value = 0;
  std::string text;  // "0.25", exact, without zeros at its end
};

/// At least two numbers 1, 2 or 5 times a power of ten apart, from the last at or below the least
/// value to the first at or above the most; about `about` of them, never more than twice that. A
/// range of no width is widened. Values beyond 10^12 on either side of zero are taken for that,
/// and nothing is told apart that is closer than 10^-9.
std::vector<Tick> nice_ticks(Range range, int about);

}  // namespace evenclaw
