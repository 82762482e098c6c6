#include "core/paper/drawing.hpp"

#include <doctest/doctest.h>

namespace evenclaw {

namespace {

/// A point of a cubic curve, by its definition.
Point on_curve(Point start, const PathStep& step, double t) {
  const double s = 1 - t;
  const double a = s * s * s;
  const double b = 3 * s * s * t;
  const double c = 3 * s * t * t;
  const double d = t * t * t;
  return {a * start.x + b * step.bend_1.x + c * step.bend_2.x + d * step.to.x,
          a * start.y + b * step.bend_1.y + c * step.bend_2.y + d * step.to.y};
}

}  // namespace

TEST_CASE("an ellipse keeps to its equation within 0.06 percent") {
  const Point centre{3, -2};
  const Path path = ellipse(centre, 5, 2, Ink::none, {});
  Point start = path.steps[0].to;
  for (const PathStep& step : path.steps) {
    if (step.kind != StepKind::curve) continue;
    for (int i = 0; i <= 20; ++i) {
      const Point at = on_curve(start, step, i / 20.0);
      const double x = (at.x - centre.x) / 5;
      const double y = (at.y - centre.y) / 2;
      CHECK(x * x + y * y == doctest::Approx(1).epsilon(0.0006));
    }
    start = step.to;
  }
}

TEST_CASE("an ellipse ends where it began") {
  const Path path = ellipse({1, 1}, 2, 3, Ink::black, {});
  CHECK(path.steps.front().to.x == path.steps[4].to.x);
  CHECK(path.steps.front().to.y == path.steps[4].to.y);
  CHECK(path.steps.back().kind == StepKind::close);
}

TEST_CASE("a point is mirrored, then scaled, then turned, then shifted") {
  // A quarter turn clockwise as y points down: (x, y) becomes (-y, x).
  const Placement placement{{10, 20}, 0, 1, 2, true};
  const Point point = placed({3, 4}, placement);
  CHECK(point.x == doctest::Approx(10 - 8));
  CHECK(point.y == doctest::Approx(20 - 6));
}

TEST_CASE("placing a path places every point of it") {
  const Placement shift{{1, 2}, 1, 0, 1, false};
  const auto steps = placed({move_to({0, 0}), curve_to({1, 1}, {2, 2}, {3, 3})}, shift);
  CHECK(steps[0].to.x == 1);
  CHECK(steps[1].bend_1.y == 3);
  CHECK(steps[1].bend_2.x == 3);
  CHECK(steps[1].to.y == 5);
}

}  // namespace evenclaw
