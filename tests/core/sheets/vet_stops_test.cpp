#include "core/sheets/vet_stops.hpp"

#include <doctest/doctest.h>

#include "core/sheets/vet_box.hpp"
#include "core/sheets/vets_page.hpp"
#include "tests/core/sheets/invented_day.hpp"
#include "tests/core/sheets/sheet_text.hpp"

namespace evenclaw {

namespace {

std::string box_text(const VisitSheetInput& input) {
  return text_of(vet_box(view_of(input, english_wording())));
}

std::string page_text(const VisitSheetInput& input) {
  return text_of(vets_page(view_of(input, english_wording())));
}

constexpr const char* fall = "Went down in the crush: free her and cut no more today. Vet.";

/// A Stop of the cow in the crush.
Warning& stopped(InventedDay& day, const std::string& rule, const std::string& words,
                 const std::string& decision = {}) {
  day.warned(Rank::stop, words, decision);
  Warning& warning = day.input().warnings.back().shown.warning;
  warning.rule = rule;
  return warning;
}

/// 412 went down, and her Stop was not answered.
InventedDay day_with_fall(const std::string& decision = {}) {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.did({ActionKind::went_down});
  stopped(day, "down-in-the-crush", fall, decision);
  return day;
}

}  // namespace

TEST_CASE("a Stop for the vet that nobody answered stands in her box and on her page") {
  InventedDay day = day_with_fall();
  CHECK(holds(box_text(day.input()),
              "# VET TODAY\n# 412  The cow, went down in the crush.\n"
              "#      Ring today; nobody answered, and the vet is not asked for yet.\n"
              "#      Let her be: no more work on her feet today.\n"));
  CHECK(holds(page_text(day.input()), "- 412: The cow, went down in the crush.\n"));
}

TEST_CASE("who goes ahead takes no sign out of the box: it stays until the vet is asked for") {
  CHECK(holds(box_text(day_with_fall("go ahead").input()),
              "# 412  The cow, went down in the crush.\n"
              "#      Ring today; gone ahead anyway, and the vet is not asked for yet.\n"));
  InventedDay asked = day_with_fall("go ahead");
  asked.did({ActionKind::vet});
  asked.task("412", TaskKind::vet, Owner::vet, 0);
  CHECK(holds(box_text(asked.input()), "Ring today; vet asked for.\n"));
}

TEST_CASE("a warning that asks for no vet, or is a note, calls no vet") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  stopped(day, "both-claws-blocked", "Left hind: a block on both claws.");
  CHECK(holds(box_text(day.input()), "No vet was asked for"));
  stopped(day, "down-in-the-crush", fall).rank = Rank::note;
  CHECK(holds(box_text(day.input()), "No vet was asked for"));
}

TEST_CASE("where only the check knows of it, who goes ahead decides that no vet is needed") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  stopped(day, "lame-on-two-legs", "Lame on both hinds. Vet.", "go ahead");
  CHECK(holds(box_text(day.input()), "No vet was asked for"));
  stopped(day, "it-stinks", "It stinks (left hind): dead tissue? Vet?").rank = Rank::ask;
  CHECK(holds(box_text(day.input()), "It stinks (left hind): dead tissue? Vet?"));
}

TEST_CASE("a toe far too short stands in the box with its length, and that no more comes off it") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.rest_fine();
  day.measured(Foot::lh, 680).claw = Claw::outside;
  day.measured(Foot::lh, 780).claw = Claw::inside;
  Warning& warning = stopped(day, "toe-far-too-short", "Toe 68 mm: no more off.");
  warning.foot = Foot::lh;
  warning.claw = Claw::outside;
  CHECK(holds(box_text(day.input()),
              "# 412  Left hind, outside claw, toe length 68 mm.\n"
              "#      Toe 68 mm: no more off.\n"
              "#      Ring today; nobody answered, and the vet is not asked for yet.\n"
              "#      Nothing more comes off that toe."));
}

TEST_CASE("an act the law keeps for the vet stands in the box until somebody says who did it") {
  const auto day_answered = [](const std::string& decision) {
    InventedDay day("Hollow Meadow");
    day.turn("412");
    day.did({ActionKind::amputated, Foot::rh, Claw::outside});
    day.did({ActionKind::injected});
    stopped(day, "act-reserved-for-vet", "Surgery is the vet's. Who did it?", decision).foot =
        Foot::rh;
    return box_text(day.input());
  };
  CHECK(holds(day_answered(""),
              "# 412  Right hind, claw amputated, outside claw.\n"
              "#      Surgery is the vet's. Who did it?\n"));
  CHECK(holds(day_answered("RH claw amputated by the vet"), "No vet was asked for"));
}

TEST_CASE("once the vet came, or she left, her Stop calls nobody") {
  InventedDay came = day_with_fall();
  TaskRow& task = came.task("412", TaskKind::vet, Owner::vet, 0);
  task.open = false;
  CHECK(holds(box_text(came.input()), "No cow waits for the vet any more"));
  task.visit = visit_id(came.input().visit.herd, came.input().visit.day - 7, 1);
  CHECK(holds(box_text(came.input()), "VET TODAY"));

  InventedDay left = day_with_fall();
  left.known("412").left_on = left.input().visit.day;
  CHECK(holds(box_text(left.input()), "No vet was asked for"));
}

TEST_CASE("a cow stands once in the vet's box, with all that is hers, and one time to ring") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.found({Foot::rh, Claw::outside, Lesion::tn});
  day.did({ActionKind::went_down});
  stopped(day, "down-in-the-crush", fall);
  day.task_on(Foot::lh, Claw::none, TaskKind::vet, Owner::vet, 0);
  day.task_on(Foot::rh, Claw::none, TaskKind::vet, Owner::vet, 0);
  const std::string text = box_text(day.input());
  CHECK(text.find("# 412") == text.rfind("# 412"));
  CHECK(text.find("Ring today") == text.rfind("Ring today"));
  CHECK(holds(text, "Left hind, "));
  CHECK(holds(text, "Right hind, outside claw: toe necrosis (TN)"));
  CHECK(holds(text, "The cow, went down in the crush.\n"));
}

TEST_CASE("a fall is named beside a foot that the vet was asked for") {
  InventedDay day = day_with_fall("412 vet");
  day.task_on(Foot::lh, Claw::none, TaskKind::vet, Owner::vet, 0);
  CHECK(holds(box_text(day.input()), "The cow, went down in the crush.\n"));
}

TEST_CASE("a vet due later and a Stop of today each say when") {
  InventedDay day = day_with_fall();
  day.task_on(Foot::lh, Claw::none, TaskKind::vet, Owner::vet, 3);
  day.task("77", TaskKind::vet, Owner::vet, 2);
  const std::string text = box_text(day.input());
  CHECK(holds(text, "Ring by Fri 27 Nov; vet asked for.\n"));
  CHECK(holds(text, "Ring today; vet asked for.\n"));
  CHECK(text.find("# 412") < text.find("# 77"));
}

TEST_CASE("a sign of a foot is named beside what was found on it, and of no other foot") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.found({Foot::lh, Claw::outside, Lesion::tu});
  day.did({ActionKind::pus_above, Foot::lh});
  day.did({ActionKind::bleeding, Foot::rh});
  day.task_on(Foot::lh, Claw::none, TaskKind::vet, Owner::vet, 0);
  CHECK(holds(box_text(day.input()),
              "Left hind, pus above the coronet and outside claw: toe ulcer (TU).\n"));
  const std::string page = page_text(day.input());
  CHECK(holds(page, "outside claw, pus above the coronet: 412 left hind\n"));
  CHECK(holds(page, "412: Right hind, bleeding that does not stop; left hind, pus"));
}

TEST_CASE("a foot both of whose claws hurt stands in the box until somebody decided on it") {
  const struct {
    const char* rule;
    Rank rank;
    const char* decision;
    bool is_told;
  } rows[] = {{"both-claws-painful", Rank::ask, "", true},
              {"both-claws-painful", Rank::ask, "go ahead", false},
              {"block-on-painful-claw", Rank::stop, "", true},
              {"block-on-painful-claw", Rank::stop, "go ahead", false}};

  for (const auto& row : rows) {
    InventedDay day("Hollow Meadow");
    day.turn("412");
    day.found({Foot::lh, Claw::outside, Lesion::su});
    day.found({Foot::lh, Claw::inside, Lesion::su});
    day.warned(row.rank, "Left hind: both claws hurt, no good one for a block. Vet?", row.decision);
    Warning& warning = day.input().warnings.back().shown.warning;
    warning.rule = row.rule;
    warning.foot = Foot::lh;
    warning.claw = row.rank == Rank::ask ? Claw::both : Claw::inside;
    const std::string text = box_text(day.input());
    CAPTURE(text);
    CHECK(holds(text, "# 412  Left hind, outside claw: sole ulcer") == row.is_told);
    CHECK(holds(text, "#      Both claws hurt, no good one for a block.\n") == row.is_told);
    CHECK_FALSE(holds(page_text(day.input()), "Vet? Not answered"));
  }
}

}  // namespace evenclaw
