// How the words below an axis are set so that none lies over another.
#pragma once

#include <vector>

#include "core/paper/chart.hpp"
#include "core/paper/chart_ticks.hpp"

namespace evenclaw {

/// What stands below an axis. Every tick has its stroke, also one whose words are left out.
struct AxisWordsSet {
  std::vector<Tick> shown;
  bool are_turned = false;  // they read upwards and end at the axis
  double room = 0;          // mm they take below the ends of the ticks
};

/// Beside each other where there is room for all over `width` mm. Otherwise numbers are thinned to
/// every second, third ... of them, and names, of which none can be left out, are turned. `size` is
/// that of the letters.
AxisWordsSet set_below(const std::vector<Tick>& ticks, bool are_names, const Range& range,
                       double width, double size);

}  // namespace evenclaw
