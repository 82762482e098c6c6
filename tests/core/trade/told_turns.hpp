// Turns and a cow's past put together by hand, for tests of the rules.
#pragma once

#include <algorithm>
#include <string>
#include <utility>
#include <vector>

#include "core/base/id.hpp"
#include "core/trade/check.hpp"
#include "core/trade/follow_up.hpp"
#include "core/trade/lesion.hpp"
#include "core/trade/on_foot.hpp"

namespace evenclaw::told {

inline Finding found(Lesion lesion, Claw claw = Claw::none, Degree degree = Degree::not_called) {
  Finding finding;
  finding.lesion = lesion;
  finding.claw = claw;
  finding.degree = degree;
  return finding;
}

inline Action act(ActionKind kind, Claw claw = Claw::none, TimeSaid when = {}) {
  Action action;
  action.kind = kind;
  action.claw = claw;
  action.when = when;
  return action;
}

inline TimeSaid in_days(int days) {
  TimeSaid when;
  when.days = days;
  return when;
}

inline TimeSaid on(Weekday weekday) {
  TimeSaid when;
  when.weekday = weekday;
  return when;
}

inline FootCall foot(Foot foot, std::vector<Finding> findings, std::vector<Action> actions = {}) {
  FootCall call;
  call.foot = foot;
  call.state = findings.empty() ? FootState::unsaid : FootState::finding;
  call.findings = std::move(findings);
  call.actions = std::move(actions);
  return call;
}

inline FootCall with_state(Foot foot, FootState state, std::vector<Action> actions = {}) {
  FootCall call;
  call.foot = foot;
  call.state = state;
  call.actions = std::move(actions);
  return call;
}

inline FootCall fine(Foot foot, std::vector<Action> actions = {}) {
  return with_state(foot, FootState::nothing_found, std::move(actions));
}

inline Turn cow(std::vector<FootCall> feet) {
  Turn turn;
  turn.cow.number = "412";
  turn.feet = std::move(feet);
  return turn;
}

inline Turn lame(Turn turn, FootSet legs) {
  turn.reason = Reason::lame;
  turn.lame = legs;
  return turn;
}

inline const Day first_of_november{20758};  // 2026-11-01

inline EntryId entry(int number) {
  return {uuid_derived("entry " + std::to_string(number))};
}

/// What is known of one cow after some turns. A plain stand-in for the picture: it knows cases by
/// foot, family and claw, and what is on a foot by what was said.
class Past {
 public:
  Past& then(const Turn& turn, Day day) {
    const EntryId id = entry(++turns_);
    for (const TaskClosed& closed : tasks_closed(turn, known, day)) close_task(closed, day);
    const std::vector<TaskMade> made = tasks_made(turn, known, day, id);
    for (const FootCall& call : turn.feet) {
      for (const Action& action : call.actions) add_action(call, action, day, id);
      add_findings(call, day);
    }
    for (const TaskMade& task : made) add_task(task, day);
    add_turn(turn, day, id);
    return *this;
  }

  /// The last turn belongs to the visit that is still going on.
  Past& in_same_visit() {
    known.same_visit.push_back(known.rows.turns.back());
    return *this;
  }

  CowPast known;

 private:
  void close_task(const TaskClosed& closed, Day day) {
    for (TaskRow& task : known.rows.tasks) {
      if (task.task != closed.task) continue;
      task.open = false;
      task.closed_on = day;
      task.closed_how = closed.how;
    }
  }

  void add_task(const TaskMade& made, Day day) {
    TaskRow task;
    task.task = made.task;
    task.made_on = day;
    task.kind = made.kind;
    task.foot = made.foot;
    task.claw = made.claw;
    task.owner = made.owner;
    task.earliest = made.earliest;
    task.due = made.due;
    task.overdue = made.overdue;
    task.words = made.words;
    task.rule = made.rule;
    known.rows.tasks.push_back(task);
  }

  void add_turn(const Turn& turn, Day day, EntryId id) {
    TurnRow row;
    row.turn = id;
    row.day = day;
    row.lame = turn.lame;
    row.mobility_scale = turn.mobility.scale;
    row.mobility_score = turn.mobility.score;
    known.rows.turns.push_back(row);
  }

  void end_fixtures(const FootCall& call, const Action& action, FixtureEnd how, Day day) {
    const FixtureSaid said = *fixture_said(action.kind);
    for (OnFootRow& row : known.rows.on_feet) {
      const bool claw_meant =
          said.fixture == Fixture::wrap || !is_called(action.claw) || row.claw == action.claw;
      if (row.foot != call.foot || row.fixture != said.fixture || !claw_meant) continue;
      if (row.ended != FixtureEnd::still_on) continue;
      row.ended = how;
      row.ended_on = day;
    }
  }

  void add_action(const FootCall& call, const Action& action, Day day, EntryId id) {
    ActionRow row;
    row.turn = id;
    row.day = day;
    row.foot = call.foot;
    row.claw = action.claw;
    row.action = action.kind;
    known.rows.actions.push_back(row);
    const std::optional<FixtureSaid> said = fixture_said(action.kind);
    if (!said) return;
    switch (said->step) {
      case FixtureStep::put_on:
      case FixtureStep::renewed:
        end_fixtures(call, action, FixtureEnd::taken_off, day);
        add_fixture(call, action, day, id);
        break;
      case FixtureStep::stacked:
        break;
      case FixtureStep::taken_off:
        end_fixtures(call, action, FixtureEnd::taken_off, day);
        break;
      case FixtureStep::came_off:
        end_fixtures(call, action, FixtureEnd::came_off, day);
        break;
      case FixtureStep::left_on:
        if (is_known_on(known.rows, call.foot, said->fixture, day)) break;
        add_fixture(call, action, day, id);
        known.rows.on_feet.back().only_seen = true;
        break;
      case FixtureStep::not_known:
        end_fixtures(call, action, FixtureEnd::unknown, day);
        break;
    }
  }

  void add_fixture(const FootCall& call, const Action& action, Day day, EntryId id) {
    OnFootRow row;
    row.turn = id;
    row.foot = call.foot;
    row.claw = action.claw;
    row.fixture = fixture_said(action.kind)->fixture;
    row.since = day;
    known.rows.on_feet.push_back(row);
  }

  void add_findings(const FootCall& call, Day day) {
    if (call.state != FootState::nothing_found && call.findings.empty()) return;
    for (const Finding& finding : call.findings) add_to_case(call.foot, finding, day);
    for (CaseRow& row : known.rows.cases) {
      if (row.foot == call.foot && row.last_day != day && !row.not_found_on) {
        row.not_found_on = day;
      }
    }
  }

  void add_to_case(Foot foot, const Finding& finding, Day day) {
    const Lesion family = facts_of(finding.lesion).family;
    auto row =
        std::find_if(known.rows.cases.begin(), known.rows.cases.end(), [&](const CaseRow& other) {
          return !other.not_found_on && other.foot == foot && other.family == family &&
                 other.claw == finding.claw;
        });
    if (row == known.rows.cases.end()) {
      CaseRow fresh;
      fresh.foot = foot;
      fresh.claw = finding.claw;
      fresh.place = finding.place;
      fresh.family = family;
      fresh.first_day = day;
      row = known.rows.cases.insert(row, fresh);
    }
    row->lesion = finding.lesion;
    row->degree = finding.degree;
    row->last_day = day;
    ++row->times_found;
  }

  int turns_ = 0;
};

/// The rules that fired, "stop block-on-painful-claw LH" one by one; what is only noted for the
/// sheet when `notes` is true, and all but that when it is false.
inline std::vector<std::string> rules_fired(const std::vector<Warning>& warnings, bool notes) {
  std::vector<std::string> names;
  for (const Warning& warning : warnings) {
    if ((warning.rank == Rank::note) != notes) continue;
    std::string name = std::string(word_of(warning.rank)) + ' ' + warning.rule;
    if (warning.foot) name += ' ' + std::string(word_of(*warning.foot));
    names.push_back(name);
  }
  return names;
}

/// The stops and asks.
inline std::vector<std::string> fired(const Turn& turn, const CowPast& past, Day today,
                                      bool finished = true) {
  return rules_fired(check_turn(turn, past, today, finished, english()), false);
}

inline std::vector<std::string> noted(const Turn& turn, const CowPast& past, Day today,
                                      bool finished = true) {
  return rules_fired(check_turn(turn, past, today, finished, english()), true);
}

using Names = std::vector<std::string>;

}  // namespace evenclaw::told
