#include "core/sheets/vet_asked_before.hpp"

#include <doctest/doctest.h>

#include "tests/core/sheets/invented_day.hpp"

namespace evenclaw {

namespace {

std::string asked_for(InventedDay& day, std::optional<Foot> foot) {
  TaskRow& task = day.task("412", TaskKind::vet, Owner::vet, 0);
  task.foot = foot;
  return vet_asked_for_what(task, day.rows(), day.rows().cases, english_wording());
}

}  // namespace

TEST_CASE("he was asked for what was seen and found on that foot, of her for every foot") {
  InventedDay day("Hollow Meadow");
  day.turn("412", Reason::lame, {Foot::lh});
  day.found({Foot::lh, Claw::outside, Lesion::tu});
  day.did({ActionKind::pus_above, Foot::lh});
  day.found({Foot::rh, Claw::inside, Lesion::su});
  CHECK(asked_for(day, Foot::lh) == "pus above the coronet and outside claw: toe ulcer (TU)");
  CHECK(asked_for(day, std::nullopt) ==
        "left hind, pus above the coronet; left hind, outside claw: toe ulcer (TU); right hind, "
        "inside claw: sole ulcer (SU)");
}

TEST_CASE("what is gone since is not told, and no lameness in its stead") {
  InventedDay day("Hollow Meadow");
  day.turn("412", Reason::lame, {Foot::lh});
  day.found({Foot::lh, Claw::outside, Lesion::tu});
  day.rows().cases.back().not_found_on = day.input().visit.day;
  CHECK(asked_for(day, Foot::lh).empty());
}

TEST_CASE("with nothing found he was asked for how she came, or why she was not done") {
  InventedDay day("Hollow Meadow");
  day.turn("412", Reason::lame, {Foot::lh});
  CHECK(asked_for(day, std::nullopt) == "lame on left hind");
  day.turn("412", Reason::not_called);
  day.last_turn().end = TurnEnd::not_done;
  day.last_turn().end_reason = "went down";
  CHECK(asked_for(day, std::nullopt) == "lame on left hind and \"went down\"");
}

TEST_CASE("what the vet was asked to see is left alone until he came, as long as it is there") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.found({Foot::lh, Claw::outside, Lesion::tn});
  day.did({ActionKind::bleeding, Foot::lh});
  TaskRow& task = day.task("412", TaskKind::vet, Owner::vet, 0);
  task.foot = Foot::lh;
  const auto left = left_until_vet(task, day.rows(), day.rows().cases);
  REQUIRE(left.size() == 1);
  CHECK(left.front().saying == Saying::leave_foot_alone);
  day.rows().cases.back().not_found_on = day.input().visit.day;
  CHECK(left_until_vet(task, day.rows(), day.rows().cases).empty());
}

TEST_CASE("pain relief asked for at an earlier visit is told as that") {
  InventedDay day("Hollow Meadow");
  TaskRow& task = day.task("412", TaskKind::vet, Owner::vet, -7);
  task.rule = "pain-relief";
  task.made_on = day.input().visit.day - 7;
  const VisitView view = view_of(day.input(), english_wording());
  CHECK(asked_before_words(view, *view.tasks.front()) ==
        "pain relief was asked for on Tue 17 Nov; nobody said since whether she got any");
}

}  // namespace evenclaw
