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
              "# VET TODAY\n# 412  Left hind, outside claw: white line abscess, heel, bad (WLA).\n"
              "#      Ring today; vet asked for.\n"));
}

TEST_CASE("a vet not due today is not called for today") {
  InventedDay day("Hollow Meadow");
  day.turn("412", Reason::lame, {Foot::lh});
  day.foot(Foot::lh, FootState::nothing_found);
  day.task_on(Foot::lh, Claw::none, TaskKind::vet, Owner::vet, 3);
  const std::string text = vet_box_text(day.input());
  CHECK(holds(text, "# VET\n"));
  CHECK(holds(text, "Left hind, came lame, nothing found"));
  CHECK(holds(text, "Ring by Fri 27 Nov; vet asked for."));
}

TEST_CASE("a foot for the vet that was not lifted is not called fine") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.foot(Foot::lh, FootState::not_lifted);
  day.task_on(Foot::lh, Claw::none, TaskKind::vet, Owner::vet, 0);
  CHECK(holds(vet_box_text(day.input()), "Left hind, not lifted.\n"));
}

TEST_CASE("a vet asked for at an earlier visit and not come is late") {
  InventedDay day("Hollow Meadow");
  TaskRow& task = day.task("412", TaskKind::vet, Owner::vet, -7);
  task.visit = visit_id(day.input().visit.herd, day.input().visit.day - 7, 1);
  task.made_on = day.input().visit.day - 7;
  const std::string text = vet_box_text(day.input());
  CHECK(holds(text,
              "# 412  The cow, the vet was asked for on Tue 17 Nov; nobody said since whether"));
  CHECK(holds(text, "Late, was due by Tue 17 Nov; ring today."));
}

TEST_CASE("of a vet asked for earlier it is told what was there then") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  const Day then = day.input().visit.day - 7;
  TaskRow& task = day.task_on(Foot::lh, Claw::none, TaskKind::vet, Owner::vet, -7);
  task.visit = visit_id(day.input().visit.herd, then, 1);
  task.made_on = then;
  day.input().vet_asked_before.push_back({task.task, "toe ulcer"});
  CHECK(holds(vet_box_text(day.input()),
              "Left hind, the vet was asked for on Tue 17 Nov for toe ulcer; nobody said since "
              "whether he came.\n"));
}

TEST_CASE("the vet asked for again for the same foot is rung once, as late as he was") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.found({Foot::rh, Claw::inside, Lesion::sw});
  TaskRow& task = day.task_on(Foot::rh, Claw::none, TaskKind::vet, Owner::vet, -7);
  const Day then = day.input().visit.day - 7;
  task.visit = visit_id(day.input().visit.herd, then, 1);
  task.made_on = then;
  day.task_on(Foot::rh, Claw::none, TaskKind::vet, Owner::vet, 0);
  const std::string text = vet_box_text(day.input());
  CHECK(holds(text,
              "Right hind, swelling (SW) above the inside claw; the vet was asked for on Tue 17 "
              "Nov; nobody "
              "said since whether he came.\n"));
  CHECK(holds(text, "Late, was due by Tue 17 Nov; ring today."));
  CHECK_FALSE(holds(text, "Right hind, the vet"));
}

TEST_CASE("no vet is said in words, not by an empty box") {
  CHECK(holds(vet_box_text(day_with_nothing_found()), "No vet was asked for"));
}

TEST_CASE("what to leave alone stands in the box, and its status once below all cows") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.found({Foot::lh, Claw::outside, Lesion::tn});
  day.task_on(Foot::lh, Claw::none, TaskKind::vet, Owner::vet, 0);
  day.turn("513");
  day.found({Foot::rh, Claw::outside, Lesion::tn});
  const std::string text = vet_box_text(day.input());
  const std::string status = "What to leave alone until then: common practice, no source.";
  CHECK(holds(text, "# 513  Right hind, outside claw: toe necrosis (TN).\n"));
  CHECK(holds(text, "Leave that foot alone until the vet has seen it.\n"));
  CHECK(holds(text, status));
  CHECK(text.find(status) == text.rfind(status));
}

TEST_CASE("the vet called for one foot is told of what is beyond trimming on another") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.found({Foot::lh, Claw::outside, Lesion::tn});
  day.found({Foot::rh, Claw::outside, Lesion::su});
  day.found({Foot::lf, Claw::outside, Lesion::hhe});
  day.task_on(Foot::rh, Claw::none, TaskKind::vet, Owner::vet, 0);
  const std::string text = vet_box_text(day.input());
  CHECK(holds(text, "Right hind, outside claw: sole ulcer"));
  CHECK(holds(text, "Left hind, outside claw: toe necrosis"));
  CHECK(!holds(text, "Left front"));
}

TEST_CASE("pain relief that was asked for is told of in the vet's box") {
  InventedDay day("Hollow Meadow");
  day.turn("710", Reason::lame, {Foot::lh});
  day.found({Foot::lh, Claw::outside, Lesion::sh, Place::not_called, Degree::slight});
  day.did({ActionKind::pain_relief_asked});
  day.task("710", TaskKind::vet, Owner::vet, 0).rule = "pain-relief";
  CHECK(holds(vet_box_text(day.input()),
              "# 710  The cow, pain relief asked for; left hind, outside claw: sole haemorrhage, "
              "slight (SH).\n"));
  day.task_on(Foot::lh, Claw::none, TaskKind::vet, Owner::vet, 0);
  const std::string both = vet_box_text(day.input());
  CHECK(holds(both, "The cow, pain relief asked for.\n"));
  CHECK(holds(both, "Left hind, outside claw: sole haemorrhage, slight (SH).\n"));
}

TEST_CASE("pain relief asked for says nothing of a sign of which nobody asked for the vet") {
  InventedDay day("Hollow Meadow");
  day.turn("710");
  day.did({ActionKind::bleeding, Foot::lh});
  day.did({ActionKind::pain_relief_asked});
  day.task("710", TaskKind::vet, Owner::vet, 0).rule = "pain-relief";
  const std::string text = vet_box_text(day.input());
  CHECK(holds(text, "The cow, pain relief asked for.\n"));
  CHECK(holds(text, "Left hind, bleeding that does not stop.\n"));
  CHECK(holds(text, "Ring today; vet not asked for yet.\n"));
}

TEST_CASE("pain relief asked for at an earlier visit is told of as what is still due") {
  InventedDay day("Hollow Meadow");
  TaskRow& task = day.task("412", TaskKind::vet, Owner::vet, -7);
  task.visit = visit_id(day.input().visit.herd, day.input().visit.day - 7, 1);
  task.made_on = day.input().visit.day - 7;
  task.words = "pain relief for her, farmer asks vet";
  task.rule = "pain-relief";
  CHECK(holds(vet_box_text(day.input()),
              "The cow, pain relief was asked for on Tue 17 Nov; nobody said since whether she got "
              "any.\n"));
}

TEST_CASE("a sign of which nobody asked for the vet stands in the box, whatever the check did") {
  struct Row {
    const char* name;
    void (*call)(InventedDay&);
    const char* words;
  };

  const Row rows[] = {
      {"blisters",
       [](InventedDay& day) {
         day.did({ActionKind::blisters, Foot::lf});
       },
       "Left front, blisters.\n"},
      {"fever", [](InventedDay& day) { day.did({ActionKind::fever}); }, "The cow, fever.\n"},
      {"swelling, claw not called",
       [](InventedDay& day) {
         day.found({Foot::lh, Claw::not_called, Lesion::sw});
       },
       "Left hind, swelling (SW).\n"},
      {"pus",
       [](InventedDay& day) {
         day.did({ActionKind::pus_above, Foot::rh, Claw::outside});
       },
       "Right hind, pus above the coronet, outside claw.\n"},
      {"fall in the words why she was let out",
       [](InventedDay& day) {
         day.last_turn().end = TurnEnd::unfinished;
         day.last_turn().end_reason = "went down";
       },
       "The cow, not finished: went down.\n"}};
  for (const Row& row : rows) {
    CAPTURE(row.name);
    InventedDay day("Hollow Meadow");
    day.turn("412");
    row.call(day);
    const std::string text = vet_box_text(day.input());
    CHECK(holds(text, std::string("# VET TODAY\n# 412  ") + row.words));
    CHECK(holds(text, "Ring today; vet not asked for yet.\n"));
  }
}

TEST_CASE(
    "that nobody leaves the farm is read before any cow, and every cow with a sign is named") {
  InventedDay day("Hollow Meadow");
  day.turn("77");
  day.did({ActionKind::bleeding, Foot::lh});
  day.turn("412");
  day.did({ActionKind::fever});
  day.turn("513");
  day.did({ActionKind::blisters, Foot::lf});
  const VisitView view = view_of(day.input(), english_wording());
  CHECK(holds(text_of(standstill_box(view)),
              "# COULD BE NOTIFIABLE\n# 412 (fever) and 513 (blisters): ring the vet or the "
              "authority now; nobody and nothing leaves the farm before"));
  CHECK(holds(text_of(called_to(view)), "- Could be notifiable: nobody and nothing leaves"));
  const std::string text = vet_box_text(day.input());
  CHECK(holds(text, "# VET TODAY\n# 412  The cow, fever.\n"));
  CHECK(text.find("# 412") < text.find("# 513  Left front, blisters.\n"));
  CHECK(text.find("# 513") < text.find("# 77  Left hind, bleeding"));
}

TEST_CASE("how a cow came stands beside what could be notifiable of her") {
  InventedDay day("Hollow Meadow");
  day.turn("412", Reason::lame, {Foot::rh});
  day.did({ActionKind::fever});
  day.did({ActionKind::sore_mouth});
  CHECK(holds(vet_box_text(day.input()),
              "# 412  The cow, fever and sore mouth, came lame on right hind.\n"));
}

TEST_CASE("of one cow what is most urgent is read first") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.found({Foot::lf, Claw::outside, Lesion::sw});
  day.task_on(Foot::lf, Claw::none, TaskKind::vet, Owner::vet, 2);
  day.did({ActionKind::bleeding, Foot::rh});
  const std::string text = vet_box_text(day.input());
  CAPTURE(text);
  CHECK(holds(text, "# 412  Right hind, bleeding that does not stop.\n"));
  CHECK(text.find("Right hind") < text.find("Left front"));
}

TEST_CASE("a line nobody understood that may tell of a sign is asked about in the box") {
  InventedDay day("Hollow Meadow");
  day.turn("331").end = TurnEnd::unfinished;
  day.last_turn().end_reason = "\"331 foo bar blisters everywhere\" was not understood";
  const std::string text = vet_box_text(day.input());
  CAPTURE(text);
  CHECK(holds(text,
              "# 331  The cow, not finished: \"331 foo bar blisters everywhere\" was not "
              "understood.\n"));
  CHECK(holds(text, "#      Ask the trimmer today what was meant;"));
}

TEST_CASE("a claw blocked again stands in the box with what was found, below what is urgent") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.found({Foot::lh, Claw::outside, Lesion::su});
  Warning again;
  again.rank = Rank::note;
  again.rule = "blocked-again";
  again.foot = Foot::lh;
  again.words = "Not healed and blocked again (left hind inside): the vet should see it.";
  day.input().warnings.push_back({day.last_turn().turn, {again, ""}});
  const std::string text = text_of(vet_box(view_of(day.input(), english_wording())));
  CHECK_MESSAGE(holds(text, "412  Left hind, outside claw: sole ulcer (SU)."), text);
  CHECK_MESSAGE(holds(text, "Not healed and blocked again"), text);
  CHECK_MESSAGE(holds(text, "Ring within the week"), text);
  CHECK_MESSAGE(!holds(text, "VET TODAY"), text);
}

TEST_CASE("lame with blisters and no lesion, nobody is told to look again; walking sound is told") {
  for (const bool has_blisters : {true, false}) {
    InventedDay day("Hollow Meadow");
    day.turn("412", Reason::lame, {Foot::rf}).walks_sound = true;
    day.foot(Foot::rf, FootState::nothing_found);
    if (has_blisters) day.did({ActionKind::blisters, Foot::rf});
    Warning lame;
    lame.rank = Rank::stop;
    lame.rule = "lame-nothing-found";
    lame.foot = Foot::rf;
    lame.words = "Came lame right front, nothing found: look again, look higher, or vet.";
    day.input().warnings.push_back({day.last_turn().turn, {lame, ""}});
    const std::string text = text_of(vet_box(view_of(day.input(), english_wording())));
    CHECK_MESSAGE(holds(text, "look again") != has_blisters, text);
    CHECK_MESSAGE(holds(text, "walks sound"), text);
  }
}

TEST_CASE("at the next visit too nobody is told to look again where blisters say why she is lame") {
  for (const bool has_blisters : {true, false}) {
    InventedDay day("Hollow Meadow");
    day.known("412");
    const Day then = day.input().visit.day - 7;
    EarlierStop lame{day.id_of("412"), EntryId{}, then, {}};
    lame.warning.rank = Rank::stop;
    lame.warning.rule = "lame-nothing-found";
    lame.warning.foot = Foot::rf;
    lame.warning.words = "Came lame right front, nothing found: look again, look higher, or vet.";
    EarlierStop seen = lame;
    seen.was_only_seen = true;
    seen.warning.rank = Rank::ask;
    seen.warning.rule = "blisters";
    seen.warning.words = "blisters";
    day.input().earlier_stops = {lame};
    if (has_blisters) day.input().earlier_stops.push_back(seen);
    const std::string text = text_of(vet_box(view_of(day.input(), english_wording())));
    CHECK_MESSAGE(holds(text, "look again") != has_blisters, text);
    CHECK_MESSAGE(holds(text, "blisters") == has_blisters, text);
  }
}

}  // namespace evenclaw
