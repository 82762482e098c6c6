#include "core/sheets/vet_box.hpp"

#include <doctest/doctest.h>

#include "tests/core/sheets/invented_day.hpp"
#include "tests/core/sheets/sheet_text.hpp"

namespace evenclaw {

namespace {

std::string vet_box_text(const VisitSheetInput& input) {
  return text_of(vet_box(view_of(input, english_wording())));
}

}  // namespace

TEST_CASE("the vet's box says cow, leg, what and when") {
  CHECK(holds(vet_box_text(three_cow_day()),
              "# VET TODAY\n# 412  Left hind, outside claw: white line abscess, heel, bad (WLA)\n"
              "#      Ring today.\n"));
}

TEST_CASE("a vet not due today is not called for today") {
  InventedDay day("Hollow Meadow");
  day.turn("412", Reason::lame, {Foot::lh});
  day.foot(Foot::lh, FootState::nothing_found);
  day.task_on(Foot::lh, Claw::none, TaskKind::vet, Owner::vet, 3);
  const std::string text = vet_box_text(day.input());
  CHECK(holds(text, "# VET\n"));
  CHECK(holds(text, "Left hind, came lame, nothing found"));
  CHECK(holds(text, "Ring by Fri 27 Nov."));
}

TEST_CASE("a foot for the vet that was not lifted is not called fine") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.foot(Foot::lh, FootState::not_lifted);
  day.task_on(Foot::lh, Claw::none, TaskKind::vet, Owner::vet, 0);
  CHECK(holds(vet_box_text(day.input()), "Left hind, not lifted\n"));
}

TEST_CASE("a vet asked for at an earlier visit and not come is late") {
  InventedDay day("Hollow Meadow");
  TaskRow& task = day.task("412", TaskKind::vet, Owner::vet, -7);
  task.visit = visit_id(day.input().visit.herd, day.input().visit.day - 7, 1);
  task.made_on = day.input().visit.day - 7;
  const std::string text = vet_box_text(day.input());
  CHECK(holds(text, "# 412  The cow, asked for on Tue 17 Nov"));
  CHECK(holds(text, "Late since Wed 18 Nov, ring today."));
}

TEST_CASE("of a vet asked for earlier it is told what was there, unless it is gone") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  const Day then = day.input().visit.day - 7;
  CaseRow& row = day.earlier({Foot::lh, Claw::outside, Lesion::tu}, 7);
  TaskRow& task = day.task_on(Foot::lh, Claw::none, TaskKind::vet, Owner::vet, -7);
  task.visit = visit_id(day.input().visit.herd, then, 1);
  task.made_on = then;
  CHECK(holds(vet_box_text(day.input()), "Left hind, asked for on Tue 17 Nov, toe ulcer\n"));
  row.not_found_on = day.input().visit.day;
  CHECK(holds(vet_box_text(day.input()), "Left hind, asked for on Tue 17 Nov\n"));
}

TEST_CASE("no vet is said in words, not by an empty box") {
  CHECK(holds(vet_box_text(day_with_nothing_found()), "No vet was asked for"));
}

TEST_CASE("what to leave alone until the vet comes follows from what was called, and only that") {
  struct Case {
    const char* name;
    void (*call)(InventedDay&);
    const char* words;  // "" for nothing
  };

  const Case rows[] = {
      {"bone",
       [](InventedDay& day) {
         day.did({ActionKind::bone_showing, Foot::lh});
       },
       "cut no further"},
      {"pus",
       [](InventedDay& day) {
         day.did({ActionKind::pus_above, Foot::lh});
       },
       "cut no further"},
      {"toe necrosis",
       [](InventedDay& day) {
         day.found({Foot::lh, Claw::outside, Lesion::tn});
       },
       "cut no further"},
      {"swollen above one claw",
       [](InventedDay& day) {
         day.found({Foot::lh, Claw::outside, Lesion::sw});
       },
       "cut no further"},
      {"swollen above both",
       [](InventedDay& day) {
         day.found({Foot::lh, Claw::both, Lesion::sw});
       },
       "no wrap"},
      {"foul",
       [](InventedDay& day) {
         day.found({Foot::lh, Claw::none, Lesion::ip});
       },
       "no wrap"},
      {"blood",
       [](InventedDay& day) {
         day.did({ActionKind::bleeding, Foot::lh});
       },
       "press on it"},
      {"fall", [](InventedDay& day) { day.did({ActionKind::went_down}); }, "no more today"},
      {"both hurt",
       [](InventedDay& day) {
         day.found({Foot::lh, Claw::outside, Lesion::su});
         day.found({Foot::lh, Claw::inside, Lesion::wla});
       },
       "no block"},
      {"one hurts, the other is bruised",
       [](InventedDay& day) {
         day.found({Foot::lh, Claw::outside, Lesion::su});
         day.found({Foot::lh, Claw::inside, Lesion::sh, Place::not_called, Degree::slight});
       },
       ""},
      {"two signs of a disease",
       [](InventedDay& day) {
         day.did({ActionKind::sore_mouth});
         day.did({ActionKind::fever});
       },
       "nobody and nothing leaves"},
      {"fever alone", [](InventedDay& day) { day.did({ActionKind::fever}); }, ""},
      {"another foot",
       [](InventedDay& day) {
         day.did({ActionKind::bone_showing, Foot::rh});
       },
       ""}};

  for (const Case& row : rows) {
    InventedDay day("Hollow Meadow");
    day.turn("412");
    row.call(day);
    const VisitView view = view_of(day.input(), english_wording());
    const auto words = left_for_vet(view, view.cows.at(0), Foot::lh);
    const std::string expected = row.words;
    CHECK_MESSAGE(words.size() == (expected.empty() ? 0U : 1U), row.name);
    if (!words.empty()) CHECK_MESSAGE(holds(words[0], expected), row.name);
  }
}

TEST_CASE("fever beside another cow's sore mouth keeps all on the farm") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.did({ActionKind::fever});
  day.turn("513");
  day.did({ActionKind::sore_mouth});
  const VisitView view = view_of(day.input(), english_wording());
  REQUIRE(view.cows.size() == 2);
  CHECK(left_for_vet(view, view.cows[0], std::nullopt).size() == 1);
  CHECK(left_for_vet(view, view.cows[1], std::nullopt).empty());
}

TEST_CASE("what to leave alone stands in the box with its status") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.found({Foot::lh, Claw::outside, Lesion::tn});
  day.task_on(Foot::lh, Claw::none, TaskKind::vet, Owner::vet, 0);
  CHECK(holds(vet_box_text(day.input()),
              "Until the vet has seen it, cut no further. Common practice, no source."));
}

}  // namespace evenclaw
