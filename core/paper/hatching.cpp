#include "core/paper/hatching.hpp"

#include <algorithm>

namespace evenclaw {

namespace {

constexpr double spacing = 1.6;  // along the edge
constexpr Stroke outline{Ink::black, 0.35, Dash::solid};
constexpr Stroke hatch_stroke{Ink::black, 0.25, Dash::solid};

/// Lines that fall to the right at 45 degrees: on each of them the way from the left edge and the
/// height above the lower one add up to the same.
std::vector<PathStep> falling_lines(const Area& area) {
  const double width = area.right - area.left;
  const double height = area.bottom - area.top;
  std::vector<PathStep> steps;
  for (int i = 1; i * spacing < width + height; ++i) {
    const double sum = i * spacing;
    const double from = std::max(0.0, sum - height);
    const double to = std::min(width, sum);
    steps.push_back(move_to({area.left + from, area.bottom - (sum - from)}));
    steps.push_back(line_to({area.left + to, area.bottom - (sum - to)}));
  }
  return steps;
}

std::vector<PathStep> mirrored(std::vector<PathStep> steps, const Area& area) {
  for (PathStep& step : steps) step.to.x = area.left + area.right - step.to.x;
  return steps;
}

std::vector<PathStep> lines_in(const Area& area, Hatch hatch) {
  switch (hatch) {
    case Hatch::open:
    case Hatch::filled:
      return {};
    case Hatch::falling:
      return falling_lines(area);
    case Hatch::rising:
      return mirrored(falling_lines(area), area);
    case Hatch::crossed: {
      std::vector<PathStep> steps = falling_lines(area);
      for (const PathStep& step : mirrored(falling_lines(area), area)) steps.push_back(step);
      return steps;
    }
  }
  return {};
}

}  // namespace

std::vector<Path> hatched(const Area& area, Hatch hatch) {
  if (area.right <= area.left || area.bottom <= area.top) return {};
  const Ink fill = hatch == Hatch::filled ? Ink::black : Ink::white;
  std::vector<Path> paths = {
      {{move_to({area.left, area.top}), line_to({area.right, area.top}),
        line_to({area.right, area.bottom}), line_to({area.left, area.bottom}), close_path()},
       fill,
       outline}};
  std::vector<PathStep> steps = lines_in(area, hatch);
  if (!steps.empty()) paths.push_back({std::move(steps), Ink::none, hatch_stroke});
  return paths;
}

}  // namespace evenclaw
