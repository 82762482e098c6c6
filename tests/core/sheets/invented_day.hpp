// Invented visits for the tests of the sheets, told row by row as the picture would give them.
#pragma once

#include <map>
#include <string>
#include <utility>

#include "core/sheets/visit_sheet.hpp"
#include "core/trade/identity.hpp"
#include "core/trade/lesion.hpp"
#include "core/trade/medicine_use.hpp"

namespace evenclaw {

/// What is said of a lesion, in the order in which it is called.
struct Called {
  Foot foot = Foot::lh;
  Claw claw = Claw::none;
  Lesion lesion = Lesion::dd;
  Place place = Place::not_called;
  Degree degree = Degree::not_called;
  DdStage stage = DdStage::not_called;
};

struct Acted {
  ActionKind action = ActionKind::opened;
  std::optional<Foot> foot = std::nullopt;
  Claw claw = Claw::none;
  std::string product = {};
  std::optional<int> days = std::nullopt;
};

/// A visit on Tuesday 24 November 2026 on which feet of `herd` are lifted.
class InventedDay {
 public:
  explicit InventedDay(const std::string& herd, FootSet todays_feet = hind_feet) {
    input_.herd_name = herd;
    input_.visit.herd = HerdId{uuid_derived("herd " + herd)};
    input_.visit.day = *day_from_text("2026-11-24");
    input_.visit.visit = visit_id(input_.visit.herd, input_.visit.day, 1);
    input_.visit.todays_feet = todays_feet;
    input_.visit.closed = true;
    input_.caller = "Anna";
    input_.writer = "Ben";
    input_.printed = input_.visit.day;
    input_.version = "0.1.0";
  }

  VisitSheetInput& input() { return input_; }

  Rows& rows() { return input_.rows; }

  [[nodiscard]] CowId id_of(const std::string& number) const {
    return CowId{uuid_derived("cow " + number)};
  }

  /// A cow of the herd, not (yet) in the crush.
  CowRow& known(const std::string& number) {
    for (CowRow& row : rows().cows) {
      if (row.cow == id_of(number)) return row;
    }
    CowRow row;
    row.herd = input_.visit.herd;
    row.cow = id_of(number);
    row.number = number;
    row.number_said = number;
    row.first_seen = row.last_seen = input_.visit.day;
    rows().cows.push_back(row);
    return rows().cows.back();
  }

  /// She comes into the crush: what follows is said of her.
  TurnRow& turn(const std::string& number, Reason reason = Reason::routine, FootSet lame = {}) {
    known(number);
    number_ = number;
    position_ = 0;
    TurnRow row;
    row.herd = input_.visit.herd;
    row.cow = id_of(number);
    row.turn = EntryId{uuid_derived("turn " + std::to_string(++turns_))};
    row.visit = input_.visit.visit;
    row.day = input_.visit.day;
    row.reason = reason;
    row.lame = lame;
    row.came_lame = reason == Reason::lame || !lame.empty();
    rows().turns.push_back(row);
    return rows().turns.back();
  }

  FootRow& foot(Foot foot, FootState state) {
    for (FootRow& row : rows().feet) {
      if (row.turn == last_turn().turn && row.foot == foot) {
        if (state == FootState::finding) row.state = state;
        return row;
      }
    }
    FootRow row;
    row.herd = input_.visit.herd;
    row.cow = last_turn().cow;
    row.turn = last_turn().turn;
    row.foot = foot;
    row.visit = input_.visit.visit;
    row.day = input_.visit.day;
    row.state = state;
    if (state != FootState::not_lifted) last_turn().lifted.add(foot);
    rows().feet.push_back(row);
    return rows().feet.back();
  }

  void rest_fine() {
    for (const Foot one : all_feet) {
      if (input_.visit.todays_feet.has(one)) foot(one, FootState::nothing_found);
    }
  }

  /// A finding with its case, first found now.
  FindingRow& found(const Called& called) {
    foot(called.foot, FootState::finding);
    FindingRow row;
    row.herd = input_.visit.herd;
    row.cow = last_turn().cow;
    row.turn = last_turn().turn;
    row.position = ++position_;
    row.visit = input_.visit.visit;
    row.day = input_.visit.day;
    row.foot = called.foot;
    row.claw = called.claw;
    row.lesion = called.lesion;
    row.family = facts_of(called.lesion).family;
    row.place = called.place;
    row.degree = called.degree;
    row.stage = called.stage;
    row.case_id = earlier(called, 0).case_id;
    rows().findings.push_back(row);
    return rows().findings.back();
  }

  /// A case of the cow in the crush, first found so many days ago.
  CaseRow& earlier(const Called& called, int days_ago) {
    CaseRow row;
    row.herd = input_.visit.herd;
    row.cow = last_turn().cow;
    row.case_id = CaseId{uuid_derived("case " + std::to_string(++cases_))};
    row.foot = called.foot;
    row.claw = called.claw;
    row.place = called.place;
    row.lesion = called.lesion;
    row.family = facts_of(called.lesion).family;
    row.first_day = row.last_day = input_.visit.day - days_ago;
    row.times_found = 1;
    rows().cases.push_back(row);
    return rows().cases.back();
  }

  ActionRow& did(const Acted& acted) {
    ActionRow row;
    row.herd = input_.visit.herd;
    row.cow = last_turn().cow;
    row.turn = last_turn().turn;
    row.position = ++position_;
    row.visit = input_.visit.visit;
    row.day = input_.visit.day;
    row.foot = acted.foot;
    row.claw = acted.claw;
    row.action = acted.action;
    row.product = acted.product;
    Action action;
    action.kind = acted.action;
    row.withdrawal = withdrawal_known(action);
    if (acted.days) row.said_for = input_.visit.day + *acted.days;
    rows().actions.push_back(row);
    const bool wrap = acted.action == ActionKind::wrap_on;
    if (acted.foot && (wrap || acted.action == ActionKind::block_on)) {
      put_on(wrap ? Fixture::wrap : Fixture::block, *acted.foot, acted.claw, 0);
    }
    return rows().actions.back();
  }

  MeasureRow& measured(Foot foot, std::int32_t tenths_mm) {
    MeasureRow row;
    row.herd = input_.visit.herd;
    row.cow = last_turn().cow;
    row.turn = last_turn().turn;
    row.position = ++position_;
    row.visit = input_.visit.visit;
    row.day = input_.visit.day;
    row.foot = foot;
    row.length.tenths_mm = tenths_mm;
    rows().measures.push_back(row);
    return rows().measures.back();
  }

  OnFootRow& put_on(Fixture fixture, Foot foot, Claw claw, int days_ago) {
    OnFootRow row;
    row.herd = input_.visit.herd;
    row.cow = last_turn().cow;
    row.turn = last_turn().turn;
    row.position = position_;
    row.foot = foot;
    row.claw = claw;
    row.fixture = fixture;
    row.since = input_.visit.day - days_ago;
    rows().on_feet.push_back(row);
    return rows().on_feet.back();
  }

  /// An open task of a cow that need not be there today; days are counted from the visit.
  TaskRow& task(const std::string& number, TaskKind kind, Owner owner, int due) {
    TaskRow row;
    row.herd = input_.visit.herd;
    row.cow = known(number).cow;
    row.task = TaskId{uuid_derived("task " + std::to_string(++tasks_))};
    row.visit = input_.visit.visit;
    row.made_on = input_.visit.day;
    row.kind = kind;
    row.owner = owner;
    row.earliest = row.due = input_.visit.day + due;
    row.overdue = row.due + 1;
    row.words = task_words(kind, std::nullopt, Claw::none);
    rows().tasks.push_back(row);
    return rows().tasks.back();
  }

  TaskRow& task_on(Foot foot, Claw claw, TaskKind kind, Owner owner, int due) {
    TaskRow& row = task(number_, kind, owner, due);
    row.foot = foot;
    row.claw = claw;
    row.words = task_words(kind, foot, claw);
    return row;
  }

  DoubtRow& doubt(DoubtKind kind, const std::string& words) {
    DoubtRow row;
    row.herd = input_.visit.herd;
    row.cow = last_turn().cow;
    row.turn = last_turn().turn;
    row.position = ++position_;
    row.visit = input_.visit.visit;
    row.day = input_.visit.day;
    row.kind = kind;
    row.words = words;
    rows().doubts.push_back(row);
    return rows().doubts.back();
  }

  void warned(Rank rank, const std::string& words, const std::string& decision) {
    Warning warning;
    warning.rank = rank;
    warning.words = words;
    input_.warnings.push_back({last_turn().turn, {warning, decision}});
  }

  TurnRow& last_turn() { return rows().turns.back(); }

 private:
  VisitSheetInput input_;
  std::string number_;
  int position_ = 0;
  int turns_ = 0;
  int cases_ = 0;
  int tasks_ = 0;
};

/// 412 with a white line abscess, block, wrap and vet; 513 with digital dermatitis; 77 well.
VisitSheetInput three_cow_day();

/// Twelve cows, nothing found on any of them.
VisitSheetInput day_with_nothing_found();

/// Ten cows with forty open tasks between them.
VisitSheetInput day_with_forty_tasks();

/// Names and words as long and as hostile as they come.
VisitSheetInput day_with_long_names();

/// A hundred and fifty cows on all four feet, something found on half of them.
VisitSheetInput day_with_many_cows();

/// Forty cows came for routine work, something was found on ten; eight weeks ago on thirty.
VisitSheetInput day_better_than_last_time();

/// Twelve lame cows of the herd whose forty were trimmed eight weeks ago.
VisitSheetInput day_of_lame_cows();

/// A cow without a number, one whose number is in doubt, one not done, one unfinished.
VisitSheetInput day_with_doubts();

}  // namespace evenclaw
