#include "core/sheets/farmers_page.hpp"

#include <doctest/doctest.h>

#include <variant>

#include "core/paper/text.hpp"
#include "tests/core/sheets/invented_day.hpp"

namespace evenclaw {

namespace {

std::string text_of(const VisitSheetInput& input) {
  Document document;
  document.blocks = farmers_page(view_of(input, english_wording()));
  return to_plain_text(document, 1000);
}

bool holds(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

}  // namespace

TEST_CASE("the vet's box comes first and says cow, leg, what and when") {
  const auto blocks = farmers_page(view_of(three_cow_day(), english_wording()));
  REQUIRE(std::holds_alternative<BoxedNotice>(blocks.at(0)));
  CHECK(std::get<BoxedNotice>(blocks[0]).title == "VET TODAY");
  CHECK(holds(text_of(three_cow_day()),
              "# 412  Left hind, outside claw: white line abscess, heel, bad (WLA)\n"
              "#      Ring today.\n"));
}

TEST_CASE("a vet not due today is not called for today") {
  InventedDay day("Hollow Meadow");
  day.turn("412", Reason::lame, {Foot::lh});
  day.foot(Foot::lh, FootState::nothing_found);
  day.task_on(Foot::lh, Claw::none, TaskKind::vet, Owner::vet, 3);
  const std::string text = text_of(day.input());
  CHECK(holds(text, "# VET\n"));
  CHECK(holds(text, "Left hind, came lame, nothing found"));
  CHECK(holds(text, "Ring by Fri 27 Nov."));
}

TEST_CASE("a foot for the vet that was not lifted is not called fine") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.foot(Foot::lh, FootState::not_lifted);
  day.task_on(Foot::lh, Claw::none, TaskKind::vet, Owner::vet, 0);
  CHECK(holds(text_of(day.input()), "Left hind, not lifted\n"));
}

TEST_CASE("a vet asked for at an earlier visit and not come is late") {
  InventedDay day("Hollow Meadow");
  TaskRow& task = day.task("412", TaskKind::vet, Owner::vet, -7);
  task.visit = visit_id(day.input().visit.herd, day.input().visit.day - 7, 1);
  task.made_on = day.input().visit.day - 7;
  const std::string text = text_of(day.input());
  CHECK(holds(text, "# 412  The cow, asked for on Tue 17 Nov"));
  CHECK(holds(text, "Late since Wed 18 Nov, ring today."));
}

TEST_CASE("no vet is said in words, not by an empty box") {
  CHECK(holds(text_of(day_with_nothing_found()), "No vet was asked for"));
}

TEST_CASE("sprays and pastes are listed with the warning that no withdrawal was recorded") {
  InventedDay day("Hollow Meadow");
  for (const char* number : {"513", "77"}) {
    day.turn(number);
    day.did({ActionKind::spray, Foot::lh, Claw::none, "blue"});
    day.did({ActionKind::spray, Foot::rh, Claw::none, "blue"});
  }
  const std::string text = text_of(day.input());
  CHECK(holds(text, "# MILK AND MEAT\n# Spray (blue): 77 and 513.\n# No withdrawal time"));
  CHECK_FALSE(holds(text_of(day_with_nothing_found()), "MILK AND MEAT"));
}

TEST_CASE("until when milk and meat are held back stands before what nobody stated") {
  InventedDay day("Hollow Meadow");
  day.turn("513");
  ActionRow& held = day.did({ActionKind::spray, Foot::lh, Claw::none, "slowmix"});
  held.withdrawal = WithdrawalKnown::held_back;
  TaskRow& task = day.task("513", TaskKind::withdrawal_end, Owner::farmer, 2);
  task.words = "last milk held back: 26 Nov evening; marked with paint";
  day.turn("77");
  day.did({ActionKind::paste, Foot::rh, Claw::none, "tar"});
  const std::string text = text_of(day.input());
  CHECK(holds(text,
              "# MILK AND MEAT\n"
              "# 513  Last milk held back: 26 Nov evening; marked with paint.\n"
              "#      Spray (slowmix).\n"
              "# Paste (tar): 77.\n"));
  CHECK(holds(text, "Where no end is named"));
  CHECK_FALSE(holds(text, "[ ] last milk"));
}

TEST_CASE("nothing else is left to do when all there is stands in a box") {
  InventedDay day("Hollow Meadow");
  day.turn("513");
  day.task("513", TaskKind::withdrawal_end, Owner::farmer, 2);
  CHECK(holds(text_of(day.input()), "Nothing else is left to do"));
  CHECK(holds(text_of(day_with_nothing_found()), "Nothing is left to do."));
}

TEST_CASE("a product without withdrawal, and one whose end was told by mouth, is not asked about") {
  InventedDay day("Hollow Meadow");
  day.turn("513");
  day.did({ActionKind::spray, Foot::lh, Claw::none, "plainmix"}).withdrawal = WithdrawalKnown::none;
  day.turn("77");
  day.did({ActionKind::paste, Foot::rh, Claw::none, "tar"});
  day.did({ActionKind::no_withdrawal});
  CHECK_FALSE(holds(text_of(day.input()), "MILK AND MEAT"));
}

TEST_CASE("what was not done is told with its reason") {
  const std::string text = text_of(day_with_doubts());
  CHECK(holds(text, "- 77 not finished: went down in the crush.\n"));
  CHECK(holds(text,
              "- 513 or 531? nobody said whether lifted: right hind; her number is in "
              "doubt.\n"));
  CHECK(holds(text, "- 620 not done: not to be found in the yard.\n"));
  CHECK(holds(text,
              "- no number (brown heifer, white star) right hind not lifted; she has no "
              "number yet.\n"));
  CHECK(holds(text, "- 88 not seen: wrap off left hind is due.\n"));
}

TEST_CASE("a cow that was done in the end is not told of as not done") {
  InventedDay day("Hollow Meadow");
  day.turn("412").end = TurnEnd::not_done;
  CHECK(holds(text_of(day.input()), "412 not done"));
  day.turn("412");
  day.rest_fine();
  CHECK_FALSE(holds(text_of(day.input()), "412 not done"));
}

TEST_CASE("when everything was done that is said") {
  CHECK(holds(text_of(day_with_nothing_found()), "Every cow that came was done"));
}

}  // namespace evenclaw
