#include <doctest/doctest.h>

#include "report/pdf/block_strips.hpp"
#include "report/pdf/pages.hpp"
#include "tests/report/pdf/shipped_fonts.hpp"

namespace evenclaw {
namespace {

BoxedNotice notice_of(int cows) {
  BoxedNotice notice;
  notice.title = "VET TODAY";
  for (int cow = 0; cow < cows; ++cow) {
    notice.items.push_back({std::to_string(100 + cow), {{plain("right front, came lame")}}});
  }
  notice.foot = {plain("The farm rings the vet.")};
  return notice;
}

}  // namespace

TEST_CASE("A notice lies in a heavy box as wide as the text, the cow large in it") {
  Typesetter typesetter = test::typesetter();
  const std::vector<Page> pages = dealt_to_pages(notice_strips(notice_of(1), typesetter));
  const std::vector<Extent> boxes = test::boxes_on(pages[0].pieces);
  REQUIRE(boxes.size() == 1);
  CHECK(boxes[0].right - boxes[0].left == doctest::Approx(column_width));
  const PlacedLine cow = test::placed(pages[0].pieces, "100");
  const PlacedLine words = test::placed(pages[0].pieces, "right front, came lame");
  CHECK(cow.line.ascent > 1.5 * words.line.ascent);
  CHECK(cow.at.y == doctest::Approx(words.at.y));
}

TEST_CASE("The words behind all labels begin in one column") {
  Typesetter typesetter = test::typesetter();
  BoxedNotice notice;
  notice.items = {{"7", {{plain("one")}}}, {"no number (red heifer)", {{plain("two")}}}};
  const auto pieces = dealt_to_pages(notice_strips(notice, typesetter))[0].pieces;
  CHECK(test::placed(pieces, "one").at.x == doctest::Approx(test::placed(pieces, "two").at.x));
}

TEST_CASE("A short notice is one piece, a long one is parted between its cows") {
  Typesetter typesetter = test::typesetter();
  CHECK(test::is_one_piece(notice_strips(notice_of(3), typesetter)));
  const std::vector<Page> pages = dealt_to_pages(notice_strips(notice_of(40), typesetter));
  REQUIRE(pages.size() > 1);
  for (const Page& page : pages) {
    CHECK(test::lines_on(page.pieces).front() == "VET TODAY");
    CHECK(test::boxes_on(page.pieces).size() == 1);
  }
}

}  // namespace evenclaw
