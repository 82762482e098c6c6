#include <doctest/doctest.h>

#include "report/pdf/block_strips.hpp"
#include "report/pdf/pages.hpp"
#include "tests/report/pdf/shipped_fonts.hpp"

namespace evenclaw {
namespace {

Strips figure_of(double width, double height) {
  Typesetter typesetter = test::typesetter();
  Figure figure;
  figure.drawing.width = width;
  figure.drawing.height = height;
  figure.drawing.marks = {Label{{1, 1}, "LH"}, Label{{2, 2}, ""}, Label{{3, 3}, "RH"}};
  figure.caption = "her feet";
  return figure_strips(figure, {0, 100}, typesetter);
}

}  // namespace

TEST_CASE("A drawing keeps its size where there is room, and else its shape") {
  CHECK(figure_of(50, 20)[0].height == doctest::Approx(20));
  CHECK(figure_of(200, 20)[0].height == doctest::Approx(10));
  CHECK(figure_of(50, 2000)[0].height < column_height);
}

TEST_CASE("A drawing stays with its caption") {
  const Strips strips = figure_of(50, 20);
  CHECK(test::is_one_piece(strips));
  CHECK(test::lines_of(strips) == std::vector<std::string>{"her feet"});
}

TEST_CASE("Every label of a drawing is set, also behind one that says nothing") {
  const Strips strips = figure_of(50, 20);
  const auto& drawing = std::get<PlacedDrawing>(strips[0].pieces[0]);
  REQUIRE(drawing.labels.size() == 3);
  CHECK(drawing.labels[2].text == "RH");
}

TEST_CASE("A drawing of no size leaves its caption") {
  CHECK(test::lines_of(figure_of(0, 0)) == std::vector<std::string>{"her feet"});
}

}  // namespace evenclaw
