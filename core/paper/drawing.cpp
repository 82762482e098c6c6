#include "core/paper/drawing.hpp"

#include <utility>

namespace evenclaw {

PathStep move_to(Point to) {
  return {StepKind::move, to, {}, {}};
}

PathStep line_to(Point to) {
  return {StepKind::line, to, {}, {}};
}

PathStep curve_to(Point bend_1, Point bend_2, Point to) {
  return {StepKind::curve, to, bend_1, bend_2};
}

PathStep close_path() {
  return {StepKind::close, {}, {}, {}};
}

Path line(Point from, Point to, Stroke stroke) {
  return {{move_to(from), line_to(to)}, Ink::none, stroke};
}

Path ellipse(Point centre, double radius_x, double radius_y, Ink fill, Stroke stroke) {
  // How far a control point lies from its end of a quarter circle: 4/3 (sqrt(2) - 1).
  constexpr double reach = 0.5522847498;
  const double x = centre.x;
  const double y = centre.y;
  const double reach_x = reach * radius_x;
  const double reach_y = reach * radius_y;
  return {{move_to({x + radius_x, y}),
           curve_to({x + radius_x, y + reach_y}, {x + reach_x, y + radius_y}, {x, y + radius_y}),
           curve_to({x - reach_x, y + radius_y}, {x - radius_x, y + reach_y}, {x - radius_x, y}),
           curve_to({x - radius_x, y - reach_y}, {x - reach_x, y - radius_y}, {x, y - radius_y}),
           curve_to({x + reach_x, y - radius_y}, {x + radius_x, y - reach_y}, {x + radius_x, y}),
           close_path()},
          fill,
          stroke};
}

Point placed(Point point, const Placement& placement) {
  const double x = (placement.mirrored ? -point.x : point.x) * placement.scale;
  const double y = point.y * placement.scale;
  return {placement.shift.x + x * placement.cosine - y * placement.sine,
          placement.shift.y + x * placement.sine + y * placement.cosine};
}

std::vector<PathStep> placed(std::vector<PathStep> steps, const Placement& placement) {
  for (PathStep& step : steps) {
    step.to = placed(step.to, placement);
    step.bend_1 = placed(step.bend_1, placement);
    step.bend_2 = placed(step.bend_2, placement);
  }
  return steps;
}

}  // namespace evenclaw
