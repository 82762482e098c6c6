#include "core/sheets/stay_near.hpp"

#include <doctest/doctest.h>

#include "tests/core/sheets/invented_day.hpp"
#include "tests/core/sheets/sheet_text.hpp"

namespace evenclaw {

namespace {

std::string stay_near_text(const VisitSheetInput& input) {
  return text_of(stay_near(view_of(input, english_wording())));
}

bool has_no_stay_near(const VisitSheetInput& input) {
  return stay_near(view_of(input, english_wording())).empty();
}

}  // namespace

TEST_CASE("a cow stands once with all that keeps her") {
  InventedDay day("Hollow Meadow");
  day.turn("513");
  day.did({ActionKind::to_straw});
  day.did({ActionKind::wrap_on, Foot::rh});
  day.did({ActionKind::block_on, Foot::lh, Claw::inside});
  day.task("513", TaskKind::withdrawal_end, Owner::farmer, 2);
  day.task("513", TaskKind::withdrawal_end, Owner::farmer, 28);
  const std::string text = stay_near_text(day.input());
  CHECK(holds(text, "not for transport or sale yet (1 cow)"));
  CHECK(holds(text,
              "513  to straw; block on, left hind, inside claw; wrap on, right hind; milk or meat "
              "held back\n"));
}

TEST_CASE("each of these keeps a cow near, and nothing else does") {
  struct Case {
    const char* name;
    void (*call)(InventedDay&);
    bool stays;
  };

  const Case rows[] = {
      {"straw", [](InventedDay& day) { day.did({ActionKind::to_straw}); }, true},
      {"parlour", [](InventedDay& day) { day.did({ActionKind::near_parlour}); }, true},
      {"short walk", [](InventedDay& day) { day.did({ActionKind::short_walk}); }, true},
      {"wrap",
       [](InventedDay& day) {
         day.did({ActionKind::wrap_on, Foot::lh});
       },
       true},
      {"old block",
       [](InventedDay& day) { day.put_on(Fixture::block, Foot::lh, Claw::inside, 30); }, true},
      {"nobody knows",
       [](InventedDay& day) {
         day.put_on(Fixture::wrap, Foot::lh, Claw::none, 9).ended = FixtureEnd::unknown;
       },
       true},
      {"wrap taken off today",
       [](InventedDay& day) {
         OnFootRow& row = day.put_on(Fixture::wrap, Foot::lh, Claw::none, 9);
         row.ended = FixtureEnd::taken_off;
         row.ended_on = day.input().visit.day;
       },
       false},
      {"withdrawal",
       [](InventedDay& day) { day.task("412", TaskKind::withdrawal_end, Owner::farmer, 0); }, true},
      {"withdrawal that is over",
       [](InventedDay& day) { day.task("412", TaskKind::withdrawal_end, Owner::farmer, -1); },
       false},
      {"for the vet",
       [](InventedDay& day) { day.task_on(Foot::lh, Claw::none, TaskKind::vet, Owner::vet, 0); },
       true},
      {"to be looked at",
       [](InventedDay& day) {
         day.task_on(Foot::lh, Claw::none, TaskKind::look_at_foot, Owner::farmer, 7);
       },
       false},
      {"Stop for the vet, not answered",
       [](InventedDay& day) {
         day.warned(Rank::stop, "Lame on two legs. Vet.", "");
         day.input().warnings.back().shown.warning.rule = "lame-on-two-legs";
       },
       true},
      {"fall", [](InventedDay& day) { day.did({ActionKind::went_down}); }, true},
      {"pus",
       [](InventedDay& day) {
         day.did({ActionKind::pus_above, Foot::lh});
       },
       true},
      {"swelling",
       [](InventedDay& day) {
         day.found({Foot::lh, Claw::both, Lesion::sw});
       },
       true},
      {"bruise",
       [](InventedDay& day) {
         day.found({Foot::lh, Claw::inside, Lesion::sh});
       },
       false},
      {"sole ulcer",
       [](InventedDay& day) {
         day.found({Foot::lh, Claw::outside, Lesion::su});
       },
       true},
      {"bad bruise",
       [](InventedDay& day) {
         day.found({Foot::lh, Claw::inside, Lesion::sh, Place::not_called, Degree::bad});
       },
       true},
      {"withdrawal nobody knows",
       [](InventedDay& day) {
         day.did({ActionKind::spray, Foot::lh, Claw::none, "x"});
       },
       true},
      {"spray without withdrawal",
       [](InventedDay& day) {
         day.did({ActionKind::spray, Foot::lh}).withdrawal = WithdrawalKnown::none;
       },
       false},
      {"lame, leg not called", [](InventedDay& day) { day.last_turn().came_lame = true; }, true},
      {"lame by her score",
       [](InventedDay& day) {
         day.last_turn().mobility_scale = MobilityScale::zero_to_three;
         day.last_turn().mobility_score = 2;
       },
       true},
      {"walks a little uneven",
       [](InventedDay& day) {
         day.last_turn().mobility_scale = MobilityScale::zero_to_three;
         day.last_turn().mobility_score = 1;
       },
       false},
      {"near calving", [](InventedDay& day) { day.did({ActionKind::near_calving}); }, true},
      {"heavy in calf", [](InventedDay& day) { day.did({ActionKind::heavy_in_calf}); }, true},
      {"told to be still lame",
       [](InventedDay& day) {
         day.task("412", TaskKind::look_at_foot, Owner::trimmer, 0).rule = "still-lame";
       },
       true},
      {"to be looked at again",
       [](InventedDay& day) { day.task("412", TaskKind::look_at_foot, Owner::trimmer, 0); }, false},
      {"left",
       [](InventedDay& day) {
         day.did({ActionKind::wrap_on, Foot::lh});
         day.known("412").left_on = day.input().visit.day;
       },
       false}};

  for (const Case& row : rows) {
    InventedDay day("Hollow Meadow");
    day.turn("412");
    row.call(day);
    CHECK_MESSAGE(has_no_stay_near(day.input()) == !row.stays, row.name);
  }
}

TEST_CASE("why she stays is told: vet, what was seen and how she came") {
  InventedDay day("Hollow Meadow");
  FootSet lame;
  lame.add(Foot::lh);
  day.turn("412", Reason::lame, lame);
  day.did({ActionKind::went_down});
  day.did({ActionKind::bleeding, Foot::rh});
  day.task_on(Foot::lh, Claw::none, TaskKind::vet, Owner::vet, 0);
  const std::string text = stay_near_text(day.input());
  CHECK(holds(text,
              "412  vet asked for; went down in the crush; bleeding that does not stop, right "
              "hind; came lame on left hind\n"));
  CHECK(holds(text, "not listed is not thereby fit to travel"));
}

TEST_CASE("a cow that was not seen stays near for her block as well") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  OnFootRow row = day.put_on(Fixture::block, Foot::rh, Claw::outside, 20);
  row.cow = day.known("9").cow;
  day.rows().on_feet = {row};
  CHECK(holds(stay_near_text(day.input()),
              "9    block, right hind, outside claw, put on Wed 4 Nov, not seen at this visit\n"));
}

TEST_CASE("a wrap is not told as on where that was asked and nobody answered") {
  for (const char* decision : {"", "still on"}) {
    InventedDay day("Hollow Meadow");
    day.turn("412");
    day.put_on(Fixture::wrap, Foot::lh, Claw::none, 9);
    day.warned(Rank::ask, "Wrap on left hind since 15 Nov (9 d): still on?", decision);
    day.input().warnings.back().shown.warning.rule = "still-on-not-mentioned";
    day.input().warnings.back().shown.warning.foot = Foot::lh;
    const std::string text = stay_near_text(day.input());
    CHECK(holds(text, "wrap, left hind: nobody knows whether it still is on") ==
          std::string(decision).empty());
    CHECK(holds(text, "wrap on, left hind") == !std::string(decision).empty());
  }
}

}  // namespace evenclaw
