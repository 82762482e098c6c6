#include "core/sheets/work_tally.hpp"

#include <doctest/doctest.h>

#include "tests/core/sheets/invented_day.hpp"
#include "tests/core/sheets/sheet_text.hpp"

namespace evenclaw {

namespace {

std::string work_tally_text(const VisitSheetInput& input) {
  return text_of(work_tally(view_of(input, english_wording())));
}

bool has_no_work_tally(const VisitSheetInput& input) {
  return work_tally(view_of(input, english_wording())).empty();
}

}  // namespace

TEST_CASE("the work stands by kind with its count and on how many cows") {
  InventedDay day("Hollow Meadow");
  for (const char* number : {"412", "513"}) {
    day.turn(number);
    day.rest_fine();
    day.did({ActionKind::wrap_on, Foot::lh});
    day.did({ActionKind::spray, Foot::lh, Claw::none, "blue"});
  }
  day.did({ActionKind::spray, Foot::rh, Claw::none, "blue"});
  const std::string text = work_tally_text(day.input());
  CHECK(holds(text, "Cows in the crush         2"));
  CHECK(holds(text, "Feet lifted               4  2 cows"));
  CHECK(holds(text, "Wraps put on              2  2 cows"));
  CHECK(holds(text, "Spray (blue)              3  2 cows"));
}

TEST_CASE("where no work was done there is no tally") {
  InventedDay day("Hollow Meadow");
  day.turn("412").end = TurnEnd::not_done;
  CHECK(has_no_work_tally(day.input()));
}

}  // namespace evenclaw
