#include "tests/core/sheets/invented_day.hpp"

#include <vector>

#include "core/sheets/last_time.hpp"

namespace evenclaw {

VisitSheetInput three_cow_day() {
  InventedDay day("Hollow Meadow");
  day.turn("412", Reason::lame, {Foot::lh});
  day.foot(Foot::rh, FootState::nothing_found);
  day.found({Foot::lh, Claw::outside, Lesion::wla, Place::white_line_heel, Degree::bad});
  day.earlier({Foot::lh, Claw::inside, Lesion::su, Place::sole_middle}, 82).not_found_on =
      day.input().visit.day - 53;
  day.did({ActionKind::opened, Foot::lh, Claw::outside});
  day.did({ActionKind::block_on, Foot::lh, Claw::inside});
  day.did({ActionKind::vet, Foot::lh});
  day.warned(Rank::ask, "The sole ulcer of 3 Sep was inside. Inside meant?", "no, outside");
  day.task_on(Foot::lh, Claw::none, TaskKind::vet, Owner::vet, 0);
  day.task_on(Foot::lh, Claw::inside, TaskKind::block_check, Owner::trimmer, 28);
  day.task_on(Foot::lh, Claw::inside, TaskKind::block_off, Owner::trimmer, 35);

  day.turn("513");
  day.foot(Foot::lh, FootState::nothing_found);
  day.found({Foot::rh, Claw::none, Lesion::dd, Place::behind, Degree::not_called, DdStage::raw});
  day.did({ActionKind::spray, Foot::rh, Claw::none, "blue"});
  day.did({ActionKind::wrap_on, Foot::rh, Claw::none, "", 2});
  day.task_on(Foot::rh, Claw::none, TaskKind::wrap_off, Owner::farmer, 2);

  day.turn("77", Reason::dry_off);
  day.rest_fine();
  return day.input();
}

VisitSheetInput day_with_nothing_found() {
  InventedDay day("Hollow Meadow", four_feet);
  for (int number = 101; number <= 112; ++number) {
    day.turn(std::to_string(number), number % 3 == 0 ? Reason::dry_off : Reason::routine);
    day.rest_fine();
  }
  return day.input();
}

VisitSheetInput day_with_forty_tasks() {
  InventedDay day("Hollow Meadow");
  const Foot feet[] = {Foot::lh, Foot::rh};
  for (int cow = 0; cow < 10; ++cow) {
    day.turn(std::to_string(9 + 53 * cow), Reason::recheck);
    const Foot foot = feet[cow % 2];
    day.rest_fine();
    day.found({foot, Claw::outside, Lesion::su, Place::sole_middle, Degree::plain});
    TaskRow& wrap = day.task_on(foot, Claw::none, TaskKind::wrap_off, Owner::farmer, 5);
    wrap.earliest = wrap.due - 2;
    wrap.overdue = wrap.due + 3;
    day.task_on(foot, Claw::inside, TaskKind::block_check, Owner::trimmer, 28);
    day.task_on(other_side(foot), Claw::none, TaskKind::look_at_foot, Owner::trimmer, 5 + cow % 3);
    day.task_on(foot, Claw::inside, TaskKind::block_off, Owner::trimmer, cow == 3 ? -9 : 42);
  }
  return day.input();
}

VisitSheetInput day_with_many_cows() {
  InventedDay day("Hollow Meadow", four_feet);
  const Foot feet[] = {Foot::lh, Foot::rh, Foot::rf};
  for (int cow = 0; cow < 150; ++cow) {
    const Foot foot = feet[cow % 3];
    const bool is_lame = cow % 10 == 0;
    day.turn(std::to_string(7 + 9 * cow), is_lame ? Reason::lame : Reason::routine,
             is_lame ? FootSet{foot} : FootSet{});
    day.rest_fine();
    if (is_lame) {
      day.found({foot, Claw::outside, Lesion::su, Place::sole_middle, Degree::bad});
      day.did({ActionKind::block_on, foot, Claw::inside});
      day.task_on(foot, Claw::inside, TaskKind::block_check, Owner::trimmer, 28);
    } else if (cow % 4 == 1) {
      day.found({foot, Claw::none, Lesion::dd, Place::behind, Degree::not_called, DdStage::raw});
      day.did({ActionKind::wrap_on, foot, Claw::none, "", 2});
      day.task_on(foot, Claw::none, TaskKind::wrap_off, Owner::farmer, 2);
    } else if (cow % 4 == 2) {
      day.found({foot, Claw::outside, Lesion::sh, Place::sole_middle, Degree::slight});
    }
  }
  return day.input();
}

namespace {

/// So many cows on a day so long ago, something found on the first of them.
VisitSheetInput hinds_trimmed(int days_ago, int cows, int found) {
  InventedDay day("Hollow Meadow");
  VisitRow& visit = day.input().visit;
  visit.day = visit.day - days_ago;
  visit.visit = visit_id(visit.herd, visit.day, 1);
  for (int cow = 0; cow < cows; ++cow) {
    day.turn(std::to_string(100 + cow));
    day.rest_fine();
    if (cow < found) day.found({Foot::lh, Claw::outside, Lesion::sh});
  }
  return day.input();
}

/// Set beside the day eight weeks ago if that may be.
VisitSheetInput after_forty_trimmed(VisitSheetInput today) {
  const VisitSheetInput then = hinds_trimmed(56, 40, 30);
  std::vector<TurnRow> turns = today.rows.turns;
  turns.insert(turns.end(), then.rows.turns.begin(), then.rows.turns.end());
  const std::vector<VisitRow> visits = {then.visit, today.visit};
  if (last_comparable(today.visit, visits, turns)) {
    today.before = VisitBefore{then.visit, then.rows};
  }
  return today;
}

}  // namespace

VisitSheetInput day_better_than_last_time() {
  return after_forty_trimmed(hinds_trimmed(0, 40, 10));
}

VisitSheetInput day_of_lame_cows() {
  InventedDay day("Hollow Meadow");
  for (int cow = 0; cow < 12; ++cow) {
    day.turn(std::to_string(100 + 3 * cow), Reason::lame, {Foot::rh});
    day.rest_fine();
    if (cow % 4 == 0) continue;
    day.found({Foot::rh, Claw::outside, Lesion::wla, Place::white_line_heel, Degree::bad});
    day.did({ActionKind::opened, Foot::rh, Claw::outside});
  }
  return after_forty_trimmed(day.input());
}

VisitSheetInput day_with_long_names() {
  InventedDay day("Grossbauer & Söhne <\"Milchhof an der langen Strasse hinter dem Wald\"> GbR");
  day.input().caller = "Anna-Maria <script>alert(1)</script>";
  day.input().writer = "O'Neill & Daughter";
  day.turn("DE0012345678901", Reason::other);
  day.last_turn().note = "kicks </style> when the hind is lifted";
  day.rest_fine();
  FindingRow& row = day.found({Foot::rh, Claw::outside, Lesion::other});
  row.words = "long crack \"from the coronet\" down to the toe & beyond";
  day.did({ActionKind::paste, Foot::rh, Claw::outside, "salve <strong> & strong"});
  day.task_on(Foot::rh, Claw::outside, TaskKind::look_at_foot, Owner::farmer, 7).words =
      "look at \"the crack\" <right hind>";
  return day.input();
}

VisitSheetInput day_with_doubts() {
  InventedDay day("Hollow Meadow");
  day.turn("brown heifer", Reason::heifer);
  CowRow& heifer = day.known("brown heifer");
  heifer.number = heifer.number_said = "";
  heifer.known = CowKnown::unnumbered;
  heifer.looks = "brown heifer, white star";
  day.foot(Foot::lh, FootState::nothing_found);
  day.foot(Foot::rh, FootState::not_lifted);
  day.doubt(DoubtKind::unnumbered, "Which number has the brown heifer, white star?");
  day.task("brown heifer", TaskKind::look_at_foot, Owner::trimmer, 28);

  day.turn("513");
  day.known("513").known = CowKnown::doubtful;
  day.known("513").number_said = "513 or 531";
  day.known("513").number = "";
  day.foot(Foot::lh, FootState::nothing_found);
  day.doubt(DoubtKind::doubtful_number, "Was she 513 or 531?");

  TurnRow& left = day.turn("77", Reason::lame);
  left.end = TurnEnd::unfinished;
  left.end_reason = "went down in the crush";
  day.found({Foot::rh, Claw::not_called, Lesion::su});
  day.doubt(DoubtKind::unfinished, "Is she to be finished?");
  day.warned(Rank::ask, "Not finished; was the wrap on right hind seen?", "");

  TurnRow& missed = day.turn("620", Reason::not_called);
  missed.end = TurnEnd::not_done;
  missed.end_reason = "not to be found in the yard";
  day.known("88");
  day.input().not_seen.push_back({day.id_of("88"), "88", "wrap off left hind is due"});
  day.task("88", TaskKind::wrap_off, Owner::farmer, -6);
  return day.input();
}

}  // namespace evenclaw
