#include "core/sheets/found_by_kind.hpp"

#include <doctest/doctest.h>

#include "tests/core/sheets/invented_day.hpp"
#include "tests/core/sheets/sheet_text.hpp"

namespace evenclaw {

namespace {

std::string kinds_text(const VisitSheetInput& input) {
  return text_of(found_by_kind(view_of(input, english_wording())));
}

}  // namespace

TEST_CASE("a lesion stands with its code, its feet of those lifted, and claw, place and degree") {
  const std::string text = kinds_text(three_cow_day());
  CHECK(holds(text, "Found today, lesion by lesion (any of these on 2 of 6 feet lifted)"));
  CHECK(holds(text,
              "white line abscess (WLA)  1\u00a0of\u00a06  outside claw, heel, bad: 412 "
              "left hind\n"));
  CHECK(holds(text, "digital dermatitis (DD)   1\u00a0of\u00a06  raw, behind: 513 right hind\n"));
}

TEST_CASE("the lesion on most feet stands first, a foot with two of a kind counts once") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.rest_fine();
  day.found({Foot::lh, Claw::outside, Lesion::sh});
  day.found({Foot::lh, Claw::inside, Lesion::sh});
  for (const char* number : {"77", "513"}) {
    day.turn(number);
    day.rest_fine();
    day.found({Foot::rh, Claw::none, Lesion::dd});
  }
  const std::string text = kinds_text(day.input());
  CHECK(holds(text, "(any of these on 3 of 6 feet lifted)"));
  CHECK(holds(text, "2\u00a0of\u00a06  no more was called: 77 right hind, 513 right hind\n"));
  CHECK(holds(text, "1\u00a0of\u00a06  outside claw: 412 left hind; inside claw: 412 left hind\n"));
  CHECK(text.find("digital dermatitis") < text.find("sole haemorrhage"));
}

TEST_CASE("feet and cows of which the same was called are told together, most cows first") {
  InventedDay day("Hollow Meadow");
  day.turn("9");
  day.found({Foot::rh, Claw::outside, Lesion::hhe, Place::not_called, Degree::bad});
  for (const char* number : {"61", "77"}) {
    day.turn(number);
    day.found({Foot::lh, Claw::outside, Lesion::hhe, Place::not_called, Degree::slight});
    day.found({Foot::rh, Claw::outside, Lesion::hhe, Place::not_called, Degree::slight});
  }
  CHECK(holds(kinds_text(day.input()),
              "outside claw, slight: 61 both hind feet, 77 both hind feet; outside claw, bad: 9 "
              "right hind\n"));
}

TEST_CASE("lesions without a name of their own are kept apart by their words") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.found({Foot::lh, Claw::none, Lesion::other}).words = "wire cut";
  day.found({Foot::rh, Claw::none, Lesion::other}).words = "old scar";
  const std::string text = kinds_text(day.input());
  CHECK(holds(text, "wire cut"));
  CHECK(holds(text, "old scar"));
}

TEST_CASE("a day without a finding has no list of them") {
  CHECK(found_by_kind(view_of(day_with_nothing_found(), english_wording())).empty());
}

}  // namespace evenclaw
