#include "report/pdf/pages.hpp"

#include <doctest/doctest.h>

#include "tests/report/pdf/shipped_fonts.hpp"

namespace evenclaw {
namespace {

Strip strip_of(double height, bool with_next = false) {
  Strip strip;
  strip.height = height;
  strip.with_next = with_next;
  strip.pieces.emplace_back(line({0, height}, {column_width, height}, {}));
  return strip;
}

/// The numbers of the strips on each page; repeated heads are left out.
std::vector<std::vector<std::size_t>> dealt(const Strips& strips) {
  std::vector<std::vector<std::size_t>> numbers;
  for (const Page& page : dealt_to_pages(strips)) {
    numbers.emplace_back();
    for (const StripPlace& place : page.places) {
      if (!place.repeated) numbers.back().push_back(place.strip);
    }
  }
  return numbers;
}

using Dealt = std::vector<std::vector<std::size_t>>;

}  // namespace

TEST_CASE("Nothing is one page with nothing on it") {
  CHECK(dealt({}) == Dealt{{}});
}

TEST_CASE("A page is filled to its last millimetre") {
  CHECK(dealt({strip_of(column_height - 10), strip_of(10)}) == Dealt{{0, 1}});
  CHECK(dealt({strip_of(column_height - 10), strip_of(10.1)}) == Dealt{{0}, {1}});
}

TEST_CASE("A heading goes to the next page with what follows it") {
  CHECK(dealt({strip_of(column_height - 20), strip_of(8, true), strip_of(20)}) ==
        Dealt{{0}, {1, 2}});
}

TEST_CASE("What belongs together is parted only when no page can hold it") {
  CHECK(dealt({strip_of(100), strip_of(100, true), strip_of(100)}) == Dealt{{0}, {1, 2}});
  CHECK(dealt({strip_of(100), strip_of(100, true), strip_of(100, true), strip_of(100)}) ==
        Dealt{{0}, {1, 2}, {3}});
}

TEST_CASE("A new sheet is begun where it is asked for, and never an empty one") {
  Strip second = strip_of(10);
  second.starts_page = true;
  CHECK(dealt({strip_of(10), second}) == Dealt{{0}, {1}});
  CHECK(dealt({second, strip_of(10)}) == Dealt{{0, 1}});
}

TEST_CASE("A gap is left out at the top of a page") {
  Strip second = strip_of(20);
  second.gap_before = 7;
  const std::vector<Page> pages = dealt_to_pages({strip_of(column_height - 20), second});
  REQUIRE(pages.size() == 2);
  CHECK(pages[1].places[0].top == doctest::Approx(margin_top));
}

TEST_CASE("The head of a table stands again where the table goes on") {
  const auto head = std::make_shared<const Strips>(Strips{strip_of(9, true)});
  Strips strips = *head;
  for (int row = 0; row < 30; ++row) {
    Strip strip = strip_of(20);
    strip.head = head;
    strips.push_back(strip);
  }
  const std::vector<Page> pages = dealt_to_pages(strips);
  REQUIRE(pages.size() == 3);
  CHECK_FALSE(pages[0].places[0].repeated);
  for (const std::size_t page : {std::size_t{1}, std::size_t{2}}) {
    CHECK(pages[page].places[0].repeated);
    CHECK_FALSE(pages[page].places[1].repeated);
    CHECK(pages[page].places[1].top == doctest::Approx(margin_top + 9));
  }
}

TEST_CASE("A head that fills half a page is not repeated") {
  const auto head = std::make_shared<const Strips>(Strips{strip_of(150, true)});
  Strips strips = *head;
  for (int row = 0; row < 3; ++row) {
    Strip strip = strip_of(100);
    strip.head = head;
    strips.push_back(strip);
  }
  CHECK(dealt_to_pages(strips)[1].places.size() == 2);
}

TEST_CASE("A box that goes on overleaf is open below, and closed on its last page") {
  const auto frame = std::make_shared<const Frame>(Frame{1.3, 3});
  Strips strips(20, strip_of(20));
  for (Strip& strip : strips) strip.frame = frame;
  const std::vector<Page> pages = dealt_to_pages(strips);
  REQUIRE(pages.size() == 2);
  CHECK(test::boxes_on(pages[0].pieces).empty());
  CHECK(test::open_boxes_on(pages[0].pieces) == 1);
  CHECK(test::open_boxes_on(pages[1].pieces) == 0);
  const std::vector<Extent> boxes = test::boxes_on(pages[1].pieces);
  REQUIRE(boxes.size() == 1);
  CHECK(boxes[0].left == doctest::Approx(margin_side));
  CHECK(boxes[0].top == doctest::Approx(margin_top));
  CHECK(boxes[0].right == doctest::Approx(paper_width - margin_side));
  CHECK(boxes[0].bottom == doctest::Approx(pages[1].places.back().bottom + 4.3));
  CHECK(boxes[0].bottom <= paper_height - margin_bottom + 1e-6);
}

TEST_CASE("Two boxes below each other stay two") {
  Strips strips = {strip_of(20), strip_of(20)};
  strips[0].frame = std::make_shared<const Frame>(Frame{1, 3});
  strips[1].frame = std::make_shared<const Frame>(Frame{1, 3});
  strips[1].gap_before = 5;
  const std::vector<Extent> boxes = test::boxes_on(dealt_to_pages(strips)[0].pieces);
  REQUIRE(boxes.size() == 2);
  CHECK(boxes[1].top - boxes[0].bottom == doctest::Approx(5));
}

TEST_CASE("A strip no page can hold goes on on the next, and no line of it is lost or cut") {
  Strip tall;
  tall.height = 2.5 * column_height;
  for (double y = 10; y <= tall.height; y += 10) {
    tall.pieces.emplace_back(line({0, y}, {column_width, y}, {}));
  }
  const std::vector<Page> pages = dealt_to_pages({strip_of(20), tall, strip_of(20)});
  REQUIRE(pages.size() >= 3);
  std::size_t lines = 0;
  for (const Page& page : pages) {
    for (const Piece& piece : page.pieces) {
      CHECK(extent_of(piece).bottom <= paper_height - margin_bottom + 1e-6);
      ++lines;
    }
  }
  CHECK(lines == tall.pieces.size() + 2);
}

TEST_CASE("A strip just too high for the page below its head is parted, not run off the paper") {
  const auto head = std::make_shared<const Strips>(Strips{strip_of(30, true)});
  Strip high;
  high.height = column_height - 10;
  high.head = head;
  for (const double y : {20.0, column_height - 10}) {
    high.pieces.emplace_back(line({0, y}, {column_width, y}, {}));
  }
  Strips strips = *head;
  strips.push_back(strip_of(20));
  strips.back().head = head;
  strips.push_back(high);
  for (const Page& page : dealt_to_pages(strips)) {
    for (const StripPlace& place : page.places) {
      CHECK(place.bottom <= paper_height - margin_bottom + 1e-6);
    }
  }
}

}  // namespace evenclaw
