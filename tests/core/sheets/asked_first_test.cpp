#include "core/sheets/asked_first.hpp"

#include <doctest/doctest.h>

#include <string>

#include "core/sheets/withdrawal_box.hpp"
#include "tests/core/sheets/invented_day.hpp"
#include "tests/core/sheets/sheet_text.hpp"

namespace evenclaw {

namespace {

std::string box_of_day(InventedDay& day) {
  return text_of(withdrawal_box(view_of(day.input(), english_wording())));
}

}  // namespace

TEST_CASE("each cow stands in one row of ask first, by number, with all that is asked of her") {
  InventedDay day("Hollow Meadow");
  day.turn("513");
  day.did({ActionKind::spray, Foot::lh, Claw::none, "blue"});
  day.turn("77").note = "milk in the bucket";
  day.did({ActionKind::paste, Foot::lh, Claw::none, "tar"});
  day.turn("90");
  day.did({ActionKind::spray, Foot::lh, Claw::none, "blue"});
  const std::string text = box_of_day(day);
  CHECK_MESSAGE(holds(text,
                      "ASK FIRST\n"
                      "# 77  Paste (tar).\n"
                      "#     Said in a note: milk in the bucket.\n"
                      "# 90 and 513  Spray (blue).\n"),
                text);
}

TEST_CASE("of many cows of whom the same two things are asked the words tell the numbers once") {
  InventedDay day("Hollow Meadow");
  for (int number = 101; number <= 107; ++number) {
    day.turn(std::to_string(number));
    day.did({ActionKind::spray, Foot::lh, Claw::none, "blue"});
    day.did({ActionKind::paste, Foot::rh, Claw::none, "tar"});
  }
  const std::string text = box_of_day(day);
  CHECK_MESSAGE(holds(text, "Paste (tar): 101, 102, 103, 104, 105, 106 and 107."), text);
  CHECK_MESSAGE(text.find("101") == text.rfind("101"), text);
}

}  // namespace evenclaw
