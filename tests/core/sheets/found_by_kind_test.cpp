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
  CHECK(holds(text, "Found today, lesion by lesion (on 2 of 6 feet lifted)"));
  CHECK(holds(
      text,
      "white line abscess (WLA)  1\u00a0of\u00a06  412 left hind, outside claw, heel, bad\n"));
  CHECK(holds(text, "digital dermatitis (DD)   1\u00a0of\u00a06  513 right hind, raw, behind\n"));
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
  CHECK(holds(text, "(on 3 of 6 feet lifted)"));
  CHECK(holds(text, "2\u00a0of\u00a06  77 right hind; 513 right hind\n"));
  CHECK(holds(text, "1\u00a0of\u00a06  412 left hind, outside claw; 412 left hind, inside claw\n"));
  CHECK(text.find("digital dermatitis") < text.find("2\u00a0of\u00a06"));
  CHECK(text.find("2\u00a0of\u00a06") < text.find("1\u00a0of\u00a06"));
}

TEST_CASE("feet of a cow of which the same was called are told together") {
  InventedDay day("Hollow Meadow");
  day.turn("61");
  day.found({Foot::lh, Claw::outside, Lesion::hhe, Place::not_called, Degree::slight});
  day.found({Foot::rh, Claw::outside, Lesion::hhe, Place::not_called, Degree::slight});
  CHECK(holds(kinds_text(day.input()), "61 both hind feet, outside claw, slight\n"));
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
