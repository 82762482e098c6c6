#include "cli/open_points.hpp"

#include <algorithm>

#include "cli/columns.hpp"
#include "core/base/text.hpp"

namespace evenclaw::cli {

std::string open_points_text(const std::vector<OpenPoint>& points) {
  constexpr std::size_t widest_cow = 12;  // a description may be longer and goes its own way
  std::size_t width = 0;
  for (const OpenPoint& point : points) {
    width = std::max(width, std::min(character_count(point.cow_said), widest_cow));
  }
  std::string out;
  for (const OpenPoint& point : points) {
    out += wrapped_behind("  " + padded(point.cow_said, width) + "  ", point.words) + "\n";
  }
  return out;
}

}  // namespace evenclaw::cli
