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

std::string how_to_answer(const std::vector<OpenPoint>& points) {
  const auto any = [&](OpenPointKind kind, OpenPointKind or_kind) {
    return std::any_of(points.begin(), points.end(), [&](const OpenPoint& point) {
      return point.kind == kind || point.kind == or_kind;
    });
  };
  std::string out;
  if (any(OpenPointKind::unnumbered, OpenPointKind::doubtful_number)) {
    out += "  her number: evenclaw cow number \"red heifer\" 418\n";
  }
  if (any(OpenPointKind::due_not_seen, OpenPointKind::still_on)) {
    out += "  what the farm says later: evenclaw told \"118 wrap off\"\n";
  }
  return out.empty() ? out : "To answer, for example\n" + out;
}

}  // namespace evenclaw::cli
