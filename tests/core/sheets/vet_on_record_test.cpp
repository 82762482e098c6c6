#include "core/sheets/vet_on_record.hpp"

#include <doctest/doctest.h>

#include "tests/core/sheets/invented_day.hpp"

namespace evenclaw {

namespace {

/// 412 has foul on the left hind, and this besides.
VetOnRecord foul_with(void (*call)(InventedDay&)) {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.found({Foot::lh, Claw::none, Lesion::ip});
  call(day);
  const VisitView view = view_of(day.input(), english_wording());
  const CowSeen* cow = find_cow(view, day.id_of("412"));
  return vet_on_record(view, *cow, signs_of_her(*cow).at(0));
}

void decide(InventedDay& day, const std::string& decision) {
  day.warned(Rank::stop, "Foul (left hind): vet, or the vet's plan, today.", decision);
  Warning& warning = day.input().warnings.back().shown.warning;
  warning.rule = "foul-without-the-vet";
  warning.foot = Foot::lh;
}

}  // namespace

TEST_CASE("whether the vet was asked for or knows of a sign follows from what is on record") {
  struct Row {
    const char* name;
    void (*call)(InventedDay&);
    VetOnRecord expected;
  };

  const Row rows[] = {
      {"nothing", [](InventedDay&) {}, VetOnRecord::no},
      {"nobody answered", [](InventedDay& day) { decide(day, ""); }, VetOnRecord::no},
      {"gone ahead", [](InventedDay& day) { decide(day, "go ahead"); }, VetOnRecord::no},
      {"settled in words", [](InventedDay& day) { decide(day, "by the vet's plan"); },
       VetOnRecord::knows},
      {"vet called",
       [](InventedDay& day) {
         day.did({ActionKind::vet, Foot::lh});
       },
       VetOnRecord::asked},
      {"vet asked for on another foot",
       [](InventedDay& day) { day.task_on(Foot::rh, Claw::none, TaskKind::vet, Owner::vet, 0); },
       VetOnRecord::asked},
      {"pain relief alone",
       [](InventedDay& day) { day.task("412", TaskKind::vet, Owner::vet, 0).rule = "pain-relief"; },
       VetOnRecord::no},
      {"the vet's plan", [](InventedDay& day) { day.did({ActionKind::vet_plan}); },
       VetOnRecord::knows},
      {"injected as he said",
       [](InventedDay& day) { day.did({ActionKind::injected}).directed_by = ByWhom::vet; },
       VetOnRecord::knows},
      {"injected, nobody said on whose word",
       [](InventedDay& day) { day.did({ActionKind::injected}); }, VetOnRecord::no},
      {"told today to have come for what was there before",
       [](InventedDay& day) {
         TaskRow& task = day.task("412", TaskKind::vet, Owner::vet, 0);
         task.visit = visit_id(day.input().visit.herd, day.input().visit.day - 7, 1);
         task.open = false;
       },
       VetOnRecord::no},
      {"came since",
       [](InventedDay& day) { day.task("412", TaskKind::vet, Owner::vet, 0).open = false; },
       VetOnRecord::knows},
      {"left the herd", [](InventedDay& day) { day.known("412").left_on = day.input().visit.day; },
       VetOnRecord::knows}};
  for (const Row& row : rows) {
    CAPTURE(row.name);
    CHECK(foul_with(row.call) == row.expected);
  }
}

TEST_CASE("that the vet came for what was before is no word on blood of today") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.did({ActionKind::bleeding, Foot::lh});
  TaskRow& task = day.task("412", TaskKind::vet, Owner::vet, 0);
  task.visit = visit_id(day.input().visit.herd, day.input().visit.day - 7, 1);
  task.open = false;
  const VisitView view = view_of(day.input(), english_wording());
  CHECK(signs_without_vet(view, view.cows.at(0)).size() == 1);
}

TEST_CASE("what may be notifiable stays though the vet was asked for, until he came") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.did({ActionKind::sore_mouth});
  day.did({ActionKind::fever});
  TaskRow& task = day.task("412", TaskKind::vet, Owner::vet, 0);
  const auto signs = [&] {
    const VisitView view = view_of(day.input(), english_wording());
    return signs_without_vet(view, view.cows.at(0)).size();
  };
  CHECK(signs() == 2);
  task.open = false;
  CHECK(signs() == 0);
}

}  // namespace evenclaw
