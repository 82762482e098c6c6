#include <doctest/doctest.h>

#include <algorithm>

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
    const bool is_last = &page == &pages.back();
    CHECK(test::boxes_on(page.pieces).size() == (is_last ? 1 : 0));
    CHECK(test::open_boxes_on(page.pieces) == (is_last ? 0 : 1));
  }
}

TEST_CASE("Where a notice goes on on the next page its title says so") {
  Typesetter typesetter = test::typesetter();
  BoxedNotice notice = notice_of(40);
  notice.title_continued = "VET TODAY (CONTINUED)";
  const std::vector<Page> pages = dealt_to_pages(notice_strips(notice, typesetter));
  REQUIRE(pages.size() > 1);
  CHECK(test::lines_on(pages[0].pieces).front() == "VET TODAY");
  CHECK(test::lines_on(pages[1].pieces).front() == "VET TODAY (CONTINUED)");
}

TEST_CASE("No page shows the first or the last cow of a longer notice alone") {
  Typesetter typesetter = test::typesetter();
  for (int cows = 20; cows < 60; ++cows) {
    const std::vector<Page> pages = dealt_to_pages(notice_strips(notice_of(cows), typesetter));
    for (const Page& page : pages) {
      const auto lines = test::lines_on(page.pieces);
      const auto on_page = std::count(lines.begin(), lines.end(), "right front, came lame");
      CHECK_MESSAGE(on_page >= 2, cows);
    }
  }
}

TEST_CASE("A notice that fills less than half a page goes to the next one as a whole") {
  Typesetter typesetter = test::typesetter();
  int cows = 1;
  while (height_of(notice_strips(notice_of(cows + 1), typesetter)) < column_height / 2) ++cows;
  CHECK(height_of(notice_strips(notice_of(cows), typesetter)) > column_height / 3);
  CHECK(test::is_one_piece(notice_strips(notice_of(cows), typesetter)));
}

TEST_CASE("A label of many characters leaves the width of the box to what is said of her") {
  Typesetter typesetter = test::typesetter();
  BoxedNotice notice;
  notice.items = {{"no number", {{plain("one")}}}, {"501", {{plain("two")}}}};
  const auto pieces = dealt_to_pages(notice_strips(notice, typesetter))[0].pieces;
  CHECK(test::placed(pieces, "no number").line.ascent < test::placed(pieces, "501").line.ascent);
  CHECK(test::placed(pieces, "two").at.x < column_width / 4);
}

TEST_CASE("Several numbers beside what holds for them are as large as one") {
  Typesetter typesetter = test::typesetter();
  BoxedNotice notice;
  notice.items = {{"412", {{plain("one")}}}, {"116 and 124", {{plain("two")}}}};
  const auto pieces = dealt_to_pages(notice_strips(notice, typesetter))[0].pieces;
  CHECK(test::placed(pieces, "116 and 124").line.ascent == test::placed(pieces, "412").line.ascent);
}

}  // namespace evenclaw
