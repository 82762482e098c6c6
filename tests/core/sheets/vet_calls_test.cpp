#include "core/sheets/vet_calls.hpp"

#include <doctest/doctest.h>

#include "tests/core/sheets/invented_day.hpp"

namespace evenclaw {

namespace {

/// A task of the vet of the cow in the crush, made a week before the visit.
TaskRow& asked_a_week_ago(InventedDay& day, Foot foot) {
  TaskRow& task = day.task_on(foot, Claw::none, TaskKind::vet, Owner::vet, -7);
  const Day then = day.input().visit.day - 7;
  task.visit = visit_id(day.input().visit.herd, then, 1);
  task.made_on = then;
  day.input().vet_asked_before.push_back({task.task, "outside claw: toe ulcer (TU)"});
  return task;
}

std::vector<VetCall> calls_of_412(InventedDay& day) {
  const VisitView view = view_of(day.input(), english_wording());
  return vet_calls(view, day.id_of("412"));
}

constexpr const char* asked_then =
    "the vet was asked for on Tue 17 Nov for outside claw: toe ulcer (TU); nobody said since "
    "whether he came";

}  // namespace

TEST_CASE("of a cow who was not there the vet is told of then alone") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  asked_a_week_ago(day, Foot::lh);
  day.rows().turns.clear();
  const auto calls = calls_of_412(day);
  REQUIRE(calls.size() == 1);
  CHECK(calls.front().why == asked_then);
  CHECK(!calls.front().is_of_today);
}

TEST_CASE("what was found at this visit stands before what the vet was asked for") {
  const struct {
    const char* name;
    void (*say)(InventedDay&);
    std::string today;
  } rows[] = {{"a lesion",
               [](InventedDay& day) {
                 day.found({Foot::lh, Claw::inside, Lesion::su});
               },
               "inside claw: sole ulcer (SU); "},
              {"nothing", [](InventedDay& day) { day.foot(Foot::lh, FootState::nothing_found); },
               "nothing found; "},
              {"a sign of which he was not asked again",
               [](InventedDay& day) {
                 day.did({ActionKind::pus_above, Foot::lh});
               },
               "pus above the coronet; "},
              {"nobody spoke of it", [](InventedDay&) {}, ""}};

  for (const auto& row : rows) {
    InventedDay day("Hollow Meadow");
    day.turn("412");
    asked_a_week_ago(day, Foot::lh);
    row.say(day);
    const auto calls = calls_of_412(day);
    REQUIRE_MESSAGE(calls.size() == 1, row.name);
    CHECK_MESSAGE(calls.front().why == row.today + asked_then, row.name);
  }
}

TEST_CASE("a call of this visit on another foot is told before one of then") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  asked_a_week_ago(day, Foot::lh);
  day.found({Foot::rh, Claw::inside, Lesion::su});
  day.task_on(Foot::rh, Claw::none, TaskKind::vet, Owner::vet, 0);
  const auto calls = calls_of_412(day);
  REQUIRE(calls.size() == 2);
  CHECK(calls.front().foot == Foot::rh);
  CHECK(calls.back().why == asked_then);
}

}  // namespace evenclaw
