#include <doctest/doctest.h>

#include "report/pdf/block_strips.hpp"
#include "report/pdf/pages.hpp"
#include "tests/report/pdf/shipped_fonts.hpp"

namespace evenclaw {
namespace {

WritingForm form_of(const std::vector<WritingItem>& items) {
  WritingForm form;
  form.label_head = "Cow";
  form.before = {"Came for", "Lame on"};
  form.tick_head = "nothing found";
  form.columns = {{"what", 3}, {"where", 1}};
  form.rows = {"LH", "RH"};
  form.behind = {"See again"};
  form.items = items;
  return form;
}

std::vector<Page> laid(const WritingForm& form) {
  Typesetter typesetter = test::typesetter();
  return dealt_to_pages(writing_strips(form, typesetter));
}

}  // namespace

TEST_CASE("Every foot has a box of 6 mm to tick, and every cow a box round all of it") {
  const auto boxes = test::boxes_on(laid(form_of({{"412", {plain("wrap off")}}}))[0].pieces);
  REQUIRE(boxes.size() == 3);
  CHECK(boxes[0].right - boxes[0].left == doctest::Approx(6));
  CHECK(boxes[1].bottom - boxes[1].top == doctest::Approx(6));
  CHECK(boxes[2].right - boxes[2].left == doctest::Approx(column_width));
}

TEST_CASE("A cow nobody named yet has room for her number instead of it") {
  const auto lines = test::lines_on(laid(form_of({{"", {}}}))[0].pieces);
  CHECK(lines == std::vector<std::string>{"Cow", "Came for", "Lame on", "nothing", "found", "what",
                                          "where", "LH", "RH", "See again"});
}

TEST_CASE("Columns share the room as they are told to") {
  const auto pieces = laid(form_of({{"412", {}}}))[0].pieces;
  const double what = test::placed(pieces, "what").at.x;
  const double where = test::placed(pieces, "where").at.x;
  const double end = paper_width - margin_side - 3;
  CHECK((where - what) / (end + 1 - where) == doctest::Approx(3).epsilon(0.01));
}

TEST_CASE("The form of a cow is one piece") {
  const std::vector<Page> pages = laid(form_of(std::vector<WritingItem>(9, {"412", {}})));
  REQUIRE(pages.size() > 1);
  std::size_t forms = 0;
  for (const Page& page : pages) {
    const auto boxes = test::boxes_on(page.pieces);
    CHECK(boxes.size() % 3 == 0);
    forms += boxes.size() / 3;
  }
  CHECK(forms == 9);
}

TEST_CASE("A form without columns, rows or blanks does no harm") {
  WritingForm form;
  form.items = {{"412", {}}};
  CHECK(laid(form).size() == 1);
}

}  // namespace evenclaw
