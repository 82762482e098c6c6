#include "core/paper/plot.hpp"

#include <doctest/doctest.h>

#include <limits>

namespace evenclaw {
namespace {

constexpr double nan = std::numeric_limits<double>::quiet_NaN();
constexpr Plot plot{{0, 0, 100, 50}, {0, 10}, {0, 100}};

std::vector<StepKind> kinds_of(const ChartLine& line) {
  std::vector<StepKind> kinds;
  for (const DrawingMark& mark : plotted(plot, {line})) {
    if (const auto* path = std::get_if<Path>(&mark)) {
      for (const PathStep& step : path->steps) kinds.push_back(step.kind);
    }
  }
  return kinds;
}

}  // namespace

TEST_CASE("A value lies to the right and up, by its share of the axes") {
  CHECK(in_plot(plot, 5, 100).x == doctest::Approx(50));
  CHECK(in_plot(plot, 5, 100).y == doctest::Approx(0));
  CHECK(in_plot(plot, 0, 25).y == doctest::Approx(37.5));
}

TEST_CASE("What is drawn along y counts whiskers, and the feet of bars") {
  const auto points = range_along_y({ChartPoints{{{1, 10, Range{4, 22}}}}});
  CHECK(points->least == 4);
  CHECK(points->most == 22);
  const auto bars = range_along_y({ChartBars{{{1, 10}}}});
  CHECK(bars->least == 0);
  CHECK(range_along_x({ChartBars{{{1, 10, 0.5}}}})->least == doctest::Approx(0.75));
}

TEST_CASE("Values that are no numbers count for nothing and draw nothing") {
  CHECK_FALSE(range_along_y({ChartPoints{{{1, nan}}}}).has_value());
  CHECK_FALSE(range_along_x({}).has_value());
  CHECK(plotted(plot, {ChartPoints{{{nan, 1}}}, ChartBars{{{1, nan}}}}).empty());
  CHECK(plotted(plot, {ChartPoints{{{1, 1, Range{nan, 2}}}}}).size() == 1);
}

TEST_CASE("Steps hold a value until the next one") {
  ChartLine line;
  line.values = {{0, 10}, {2, 20}};
  CHECK(kinds_of(line) == std::vector{StepKind::move, StepKind::line});
  line.course = Course::steps;
  CHECK(kinds_of(line) == std::vector{StepKind::move, StepKind::line, StepKind::line});
}

TEST_CASE("A gap in the values is a gap in the line") {
  ChartLine line;
  line.values = {{0, 10}, {1, nan}, {2, 20}, {3, 30}};
  CHECK(kinds_of(line) == std::vector{StepKind::move, StepKind::move, StepKind::line});
}

TEST_CASE("A line with intervals has the two edges of its band below it, and they count along y") {
  ChartLine line;
  line.values = {{0, 10}, {1, 20}, {2, 30}};
  line.within = {{5, 15}, {nan, 25}, {20, 40}};
  const auto marks = plotted(plot, {line});
  REQUIRE(marks.size() == 3);
  for (const std::size_t edge : {0U, 1U}) {
    const Path& path = std::get<Path>(marks[edge]);
    CHECK(path.stroke.dash == Dash::dotted);
    CHECK(path.steps.size() == 2);
    CHECK(path.steps.back().kind == StepKind::move);
  }
  CHECK(std::get<Path>(marks[2]).stroke.dash == Dash::solid);
  CHECK(range_along_y({line})->least == 5);
  CHECK(range_along_y({line})->most == 40);
}

TEST_CASE("Labels of lines that end at one place stand below each other") {
  ChartLine a;
  a.values = {{0, 10}, {10, 50}};
  a.label = "a";
  ChartLine b = a;
  b.label = "b";
  std::vector<double> heights;
  for (const DrawingMark& mark : plotted(plot, {a, b})) {
    if (const auto* label = std::get_if<Label>(&mark)) heights.push_back(label->at.y);
  }
  REQUIRE(heights.size() == 2);
  CHECK(heights[1] - heights[0] >= chart_letters);
}

}  // namespace evenclaw
