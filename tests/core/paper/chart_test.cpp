#include "core/paper/chart.hpp"

#include <doctest/doctest.h>

#include <limits>

#include "core/paper/svg.hpp"
#include "tests/core/paper/invented_charts.hpp"
#include "tests/core/sheets/approved.hpp"

namespace evenclaw {
namespace {

std::vector<std::string> words_on(const Drawing& drawing) {
  std::vector<std::string> words;
  for (const DrawingMark& mark : drawing.marks) {
    if (const auto* label = std::get_if<Label>(&mark)) words.push_back(label->text);
  }
  return words;
}

bool says(const Drawing& drawing, const std::string& text) {
  for (const std::string& words : words_on(drawing)) {
    if (words == text) return true;
  }
  return false;
}

/// A mark per line, so that a difference can be read.
std::string page_of(const Figure& figure) {
  std::string svg = to_svg(figure.drawing, figure.label);
  for (std::size_t at = 0; (at = svg.find("><", at)) != std::string::npos;)
    svg.insert(at + 1, "\n");
  return "<!DOCTYPE html>\n<meta charset=\"utf-8\">\n<style>body{font-family:B612}</style>\n" +
         svg + '\n';
}

}  // namespace

TEST_CASE("Charts look as they were approved") {
  CHECK(difference_to_approved("herds.html", page_of(to_figure(test::herds_chart())), "charts") ==
        "");
  CHECK(difference_to_approved("healing.html", page_of(to_figure(test::healing_chart())),
                               "charts") == "");
  CHECK(difference_to_approved("named_herds.html", page_of(to_figure(test::named_herds_chart())),
                               "charts") == "");
  CHECK(difference_to_approved("groups.html", page_of(to_figure(test::groups_chart())), "charts") ==
        "");
  CHECK(difference_to_approved("multiples.html", page_of(to_figure(test::herd_multiples())),
                               "charts") == "");
}

TEST_CASE("Axes are named with their unit and begin at zero where that matters") {
  const Drawing drawing = to_drawing(test::herds_chart());
  CHECK(says(drawing, "cows that came lame, %"));
  CHECK(says(drawing, "0"));
  CHECK(says(drawing, "E"));
}

TEST_CASE("Everything that is drawn lies within the drawing") {
  for (const Drawing& drawing :
       {to_drawing(test::herds_chart()), to_drawing(test::healing_chart()),
        to_drawing(test::groups_chart()), to_drawing(test::herd_multiples())}) {
    for (const DrawingMark& mark : drawing.marks) {
      const auto* path = std::get_if<Path>(&mark);
      if (path == nullptr) continue;
      for (const PathStep& step : path->steps) {
        CHECK(step.to.x >= 0);
        CHECK(step.to.y >= 0);
        CHECK(step.to.x <= drawing.width);
        CHECK(step.to.y <= drawing.height);
      }
    }
  }
}

TEST_CASE("Small multiples share their axes, whose names stand once") {
  const Drawing drawing = to_drawing(test::herd_multiples());
  int names = 0;
  for (const std::string& words : words_on(drawing)) names += words == "cows that came lame, %";
  CHECK(names == 1);
  CHECK(says(drawing, "Herd A"));
  CHECK(says(drawing, "Herd F"));
}

TEST_CASE("A chart says its finding and its method to those who cannot see it") {
  const Figure figure = to_figure(test::healing_chart());
  CHECK(figure.label ==
        "Half of the cows walk well after six weeks Cows not yet healed, by days since the first "
        "call; 24 cows. Invented.");
}

TEST_CASE("A chart of nothing is its axes") {
  Chart chart;
  chart.marks = {ChartPoints{{{std::numeric_limits<double>::infinity(), 1}}}, ChartLine{}};
  CHECK(to_drawing(chart).height > chart.height);
  CHECK(to_drawing(SmallMultiples{}).height > 0);
  SmallMultiples none;
  none.columns = 0;
  none.charts = {Chart{}};
  CHECK(to_drawing(none).height > none.height);
}

}  // namespace evenclaw
