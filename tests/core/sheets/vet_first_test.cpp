#include "core/sheets/vet_first.hpp"

#include <doctest/doctest.h>

#include <string>

#include "tests/core/sheets/invented_day.hpp"

namespace evenclaw {

namespace {

/// The words of the first task on the sheet that is not the vet's.
std::string order_on_sheet(InventedDay& day) {
  const VisitView view = view_of(day.input(), english_wording());
  for (const TaskRow* task : view.tasks) {
    if (task->kind != TaskKind::vet) return task->words;
  }
  return {};
}

void farmer_looks(InventedDay& day, Foot foot) {
  day.task_on(foot, Claw::none, TaskKind::look_at_foot, Owner::farmer, 3).words =
      "look at left hind, vet if no better";
}

}  // namespace

TEST_CASE("a look of the farm says that the vet is first where he is called to that foot") {
  const struct {
    const char* name;
    void (*say)(InventedDay&);
    std::string order;
  } rows[] = {
      {"asked for that foot",
       [](InventedDay& day) { day.task_on(Foot::lh, Claw::none, TaskKind::vet, Owner::vet, 0); },
       "look at left hind again (the vet first: see his box)"},
      {"asked for her", [](InventedDay& day) { day.task("412", TaskKind::vet, Owner::vet, 0); },
       "look at left hind again (the vet first: see his box)"},
      {"a sign nobody asked him of",
       [](InventedDay& day) {
         day.found({Foot::lh, Claw::none, Lesion::ip});
       },
       "look at left hind again (the vet first: see his box)"},
      {"asked for another foot",
       [](InventedDay& day) { day.task_on(Foot::rh, Claw::none, TaskKind::vet, Owner::vet, 0); },
       "look at left hind, vet if no better"},
      {"pain relief alone",
       [](InventedDay& day) { day.task("412", TaskKind::vet, Owner::vet, 0).rule = "pain-relief"; },
       "look at left hind, vet if no better"},
      {"no vet", [](InventedDay&) {}, "look at left hind, vet if no better"}};

  for (const auto& row : rows) {
    InventedDay day("Hollow Meadow");
    day.turn("412");
    farmer_looks(day, Foot::lh);
    row.say(day);
    CHECK_MESSAGE(order_on_sheet(day) == row.order, row.name);
  }
}

TEST_CASE("her walk is watched without ringing again for whom the vet is called") {
  InventedDay day("Hollow Meadow");
  day.turn("412", Reason::lame, {Foot::lh});
  day.task("412", TaskKind::watch_her_walk, Owner::farmer, 14).words =
      "watch her walk, ring if still lame";
  day.task_on(Foot::lh, Claw::none, TaskKind::vet, Owner::vet, 0);
  CHECK(order_on_sheet(day) == "watch her walk (the vet first: see his box)");
}

TEST_CASE("a wrap comes off a foot that is left alone only after the vet") {
  for (const auto& [lesion, order] :
       {std::pair(Lesion::tn, "wrap off left hind (the vet first: see his box)"),
        std::pair(Lesion::su, "wrap off left hind")}) {
    InventedDay day("Hollow Meadow");
    day.turn("412");
    day.found({Foot::lh, Claw::outside, lesion});
    day.task_on(Foot::lh, Claw::none, TaskKind::vet, Owner::vet, 0);
    day.task_on(Foot::lh, Claw::none, TaskKind::wrap_off, Owner::farmer, 5);
    CHECK(order_on_sheet(day) == order);
  }
}

TEST_CASE("a wrap on foul comes off today, and of one on blood the vet is asked today when") {
  const struct {
    void (*say)(InventedDay&);
    std::string order;
  } rows[] = {{[](InventedDay& day) {
                 day.found({Foot::lh, Claw::none, Lesion::ip});
               },
               "wrap off left hind today, or ask the vet today: foul lives without air"},
              {[](InventedDay& day) {
                 day.did({ActionKind::bleeding, Foot::lh});
               },
               "wrap off left hind: ask the vet today when, for it bleeds (see his box)"}};

  for (const bool is_asked_for : {true, false}) {
    for (const auto& row : rows) {
      InventedDay day("Hollow Meadow");
      day.turn("412");
      row.say(day);
      day.task_on(Foot::lh, Claw::none, TaskKind::look_at_foot, Owner::trimmer, 2);
      day.task_on(Foot::lh, Claw::none, TaskKind::wrap_off, Owner::farmer, 3);
      if (is_asked_for) day.task_on(Foot::lh, Claw::none, TaskKind::vet, Owner::vet, 0);
      const VisitView view = view_of(day.input(), english_wording());
      CHECK(order_on_sheet(day) == row.order);
      CHECK(view.tasks.front()->due == day.input().visit.day);
    }
  }
}

TEST_CASE("a wrap on a foot with pus of an earlier visit comes off only after the vet") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.task_on(Foot::lh, Claw::none, TaskKind::wrap_off, Owner::farmer, 3);
  Warning warning;
  warning.rank = Rank::stop;
  warning.rule = "pus-above-the-horn";
  warning.foot = Foot::lh;
  day.input().earlier_stops.push_back(
      {day.id_of("412"), EntryId{}, day.input().visit.day - 2, warning});
  CHECK(order_on_sheet(day) == "wrap off left hind (the vet first: see his box)");
}

TEST_CASE("what the trimmer is to see again stands as it was planned") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.task_on(Foot::lh, Claw::none, TaskKind::vet, Owner::vet, 0);
  day.task_on(Foot::lh, Claw::none, TaskKind::look_at_foot, Owner::trimmer, 28);
  CHECK(order_on_sheet(day) == "see again left hind");
}

TEST_CASE("on a list without a box the farm's look says that the vet is asked for first") {
  const auto look = [](std::optional<Foot> foot) {
    TaskRow task;
    task.kind = TaskKind::look_at_foot;
    task.foot = foot;
    task.words = "look at it, ring the vet if no better";
    return task;
  };
  const auto told = [&](std::optional<Foot> foot, const char* rule, bool is_open) {
    TaskRow vet;
    vet.kind = TaskKind::vet;
    vet.owner = Owner::vet;
    vet.foot = foot;
    vet.rule = rule;
    vet.open = is_open;
    std::vector<TaskRow> tasks = {look(Foot::lh), vet};
    tell_vet_asked_first(tasks, english_wording());
    return tasks.front().words;
  };
  const std::string first = "look at left hind again (the vet is asked for first)";
  const std::string plain = "look at it, ring the vet if no better";
  CHECK(told(Foot::lh, "vet", true) == first);
  CHECK(told(std::nullopt, "vet", true) == first);
  CHECK(told(Foot::rh, "vet", true) == plain);
  CHECK(told(Foot::lh, "pain-relief", true) == plain);
  CHECK(told(Foot::lh, "vet", false) == plain);
}

}  // namespace evenclaw
