// Areas told apart by lines in them.
#pragma once

#include <vector>

#include "core/paper/chart.hpp"

namespace evenclaw {

/// An upright box in a drawing.
struct Area {
  double left = 0;
  double top = 0;
  double right = 0;
  double bottom = 0;
};

/// The outline with its hatching, which keeps inside of it. Nothing for an area without extent.
std::vector<Path> hatched(const Area& area, Hatch hatch);

}  // namespace evenclaw
