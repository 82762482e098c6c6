#include "report/pdf/typesetter.hpp"

#include <doctest/doctest.h>

#include "tests/report/pdf/shipped_fonts.hpp"

namespace evenclaw {
namespace {

TextStyle sized(double points) {
  TextStyle style;
  style.points = points;
  return style;
}

}  // namespace

TEST_CASE("No text makes no lines") {
  Typesetter typesetter = test::typesetter();
  CHECK(typesetter.lines({}, {}, 100).empty());
  CHECK(typesetter.lines({plain("")}, {}, 100).empty());
  CHECK(typesetter.widest_word({plain("")}, {}) == 0);
}

TEST_CASE("A text is broken between its words and no line is wider than asked for") {
  Typesetter typesetter = test::typesetter();
  const auto lines =
      typesetter.lines({plain("a wrap has slipped and "), strong("cuts in")}, {}, 30);
  REQUIRE(lines.size() > 1);
  std::string all;
  for (const SetLine& line : lines) {
    CHECK(line.width <= 30 + 0.01);
    all += (all.empty() ? "" : " ") + line.text;
  }
  CHECK(all == "a wrap has slipped and cuts in");
}

TEST_CASE("A word wider than its place is broken without a hyphen nobody wrote") {
  Typesetter typesetter = test::typesetter();
  std::string all;
  for (const SetLine& line : typesetter.lines({plain("Hinterhuglhapfinghofbauer")}, {}, 12)) {
    CHECK(line.width <= 12 + 0.01);
    all += line.text;
  }
  CHECK(all == "Hinterhuglhapfinghofbauer");
}

TEST_CASE("A line is as wide as its letters are large") {
  Typesetter typesetter = test::typesetter();
  const double small = typesetter.natural_width({plain("wrap")}, sized(11));
  const double large = typesetter.natural_width({plain("wrap")}, sized(22));
  CHECK(large == doctest::Approx(2 * small).epsilon(0.001));
}

TEST_CASE("The widest word asks for no more than itself") {
  Typesetter typesetter = test::typesetter();
  const double word = typesetter.natural_width({plain("dermatitis")}, {});
  CHECK(typesetter.widest_word({plain("a dermatitis it")}, {}) == doctest::Approx(word));
}

TEST_CASE("What is left over of a text of one line ends in dots") {
  Typesetter typesetter = test::typesetter();
  TextStyle style;
  style.most_lines = 1;
  const auto lines = typesetter.lines({plain("when it was done and by whom")}, style, 20);
  REQUIRE(lines.size() == 1);
  CHECK(lines[0].width <= 20 + 0.01);
}

TEST_CASE("Numbers set at the end stand under each other") {
  Typesetter typesetter = test::typesetter();
  TextStyle style;
  style.align = Align::end;
  for (const char* number : {"7", "412"}) {
    const Strips strips = typesetter.strips({plain(number)}, style, {10, 40});
    CHECK(extent_of(strips.at(0).pieces.at(0)).right == doctest::Approx(50));
  }
}

TEST_CASE("Letters the shipped fonts lack are noticed, those of western Europe are there") {
  Typesetter typesetter = test::typesetter();
  static_cast<void>(typesetter.lines({plain("Müller, Høj, Peña, Šimon, 1 ½ €, 3 µg")}, {}, 200));
  CHECK_FALSE(typesetter.lacks_letters());
  static_cast<void>(typesetter.lines({plain("Łukasz")}, {}, 200));
  CHECK(typesetter.lacks_letters());
}

TEST_CASE("What is no font is told and not printed with") {
  const auto made = Typesetter::with({{"no font at all"}}, FontReach::shipped, "en");
  REQUIRE_FALSE(made.ok());
  CHECK(made.faults().front().slug == "print-failed");
}

}  // namespace evenclaw
