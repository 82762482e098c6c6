#include <doctest/doctest.h>

#include "report/pdf/block_strips.hpp"
#include "report/pdf/pages.hpp"
#include "tests/report/pdf/shipped_fonts.hpp"

namespace evenclaw {
namespace {

std::string many_words(int count) {
  std::string text;
  for (int i = 0; i < count; ++i) text += "she walks better ";
  return text;
}

}  // namespace

TEST_CASE("A heading stays with what follows it and says its aside") {
  Typesetter typesetter = test::typesetter();
  const Strips strips = heading_strips({2, "To do", "3 tasks"}, false, typesetter);
  REQUIRE(strips.size() == 1);
  CHECK(strips[0].with_next);
  CHECK(test::lines_of(strips)[0] == "To do  3 tasks");
}

TEST_CASE("A rule stands above a heading of the second level that is not the first block") {
  Typesetter typesetter = test::typesetter();
  CHECK(heading_strips({2, "To do"}, false, typesetter)[0].pieces.size() == 2);
  CHECK(heading_strips({2, "To do"}, true, typesetter)[0].pieces.size() == 1);
  CHECK(heading_strips({3, "By Tuesday"}, false, typesetter)[0].pieces.size() == 1);
}

TEST_CASE("A paragraph keeps two lines together at either end and may be parted between") {
  Typesetter typesetter = test::typesetter();
  const Strips strips = paragraph_strips({{plain(many_words(40))}}, typesetter);
  REQUIRE(strips.size() >= 5);
  CHECK(strips[0].with_next);
  CHECK_FALSE(strips[1].with_next);
  CHECK(strips[strips.size() - 2].with_next);
  CHECK_FALSE(strips.back().with_next);
}

TEST_CASE("A bullet is one piece with the print before its first line only") {
  Typesetter typesetter = test::typesetter();
  const Strips strips = bullet_strips({{{plain(many_words(20))}}}, typesetter);
  REQUIRE(strips.size() > 1);
  CHECK(test::is_one_piece(strips));
  CHECK(strips[0].pieces.size() == 3);
  CHECK(strips[1].pieces.size() == 1);
}

TEST_CASE("Small print is set small") {
  Typesetter typesetter = test::typesetter();
  const Strips note = note_strips({{plain("a source")}}, typesetter);
  const Strips text = paragraph_strips({{plain("a source")}}, typesetter);
  CHECK(height_of(note) < height_of(text));
}

TEST_CASE("Words to write behind have a line to the edge of the page, high enough for a pen") {
  Typesetter typesetter = test::typesetter();
  const Strips strips = blank_strips({"Name and telephone"}, typesetter);
  REQUIRE(strips.size() == 1);
  CHECK(strips[0].height >= 8);
  CHECK(test::lines_of(strips)[0] == "Name and telephone");
  const Extent line = extent_of(strips[0].pieces.back());
  CHECK(line.left > 20);
  CHECK(line.right == doctest::Approx(column_width));
  CHECK(blank_strips({std::string(300, 'x')}, typesetter).size() == 1);
}

}  // namespace evenclaw
