#include "core/sheets/visit_view.hpp"

#include <algorithm>
#include <map>
#include <string_view>
#include <tuple>

#include "core/sheets/days_in_doubt.hpp"
#include "core/sheets/sore_block.hpp"
#include "core/sheets/vet_first.hpp"
#include "core/trade/after_leaving.hpp"
#include "core/trade/call_line/act_facts.hpp"
#include "core/trade/lesion.hpp"
#include "core/trade/on_foot.hpp"

namespace evenclaw {

namespace {

constexpr std::string_view still_on_rule = "still-on-not-mentioned";

int rank_of(FootState state) {
  switch (state) {
    case FootState::not_lifted:
      return 0;
    case FootState::unsaid:
      return 1;
    case FootState::nothing_found:
      return 2;
    case FootState::finding:
      return 3;
  }
  return 0;
}

using CowsById = std::map<CowId, CowSeen>;

void add_turns(CowsById& cows, const VisitSheetInput& input) {
  for (const TurnRow& row : input.rows.turns) {
    if (row.visit != input.visit.visit) continue;
    CowSeen& cow = cows[row.cow];
    cow.cow = row.cow;
    cow.turns.push_back(&row);
    for (const Foot foot : all_feet) {
      if (row.lame.has(foot)) cow.lame.add(foot);
      if (row.lifted.has(foot)) cow.lifted.add(foot);
    }
    if (row.came_lame) cow.came_lame = true;
    if (row.end != TurnEnd::not_done) cow.in_crush = true;
  }
}

/// Rows of cows without a turn at this visit are passed over.
template <class Row, class Pick>
void add_rows(CowsById& cows, const std::vector<Row>& rows, const Pick& pick) {
  for (const Row& row : rows) {
    const auto found = cows.find(row.cow);
    if (found != cows.end()) pick(found->second, row);
  }
}

void add_visit_rows(CowsById& cows, const VisitSheetInput& input) {
  const VisitId visit = input.visit.visit;
  add_rows(cows, input.rows.feet, [&](CowSeen& cow, const FootRow& row) {
    if (row.visit != visit) return;
    cow.feet.push_back(&row);
    if (row.state == FootState::finding || row.state == FootState::nothing_found) {
      cow.lifted.add(row.foot);
    }
  });
  add_rows(cows, input.rows.findings, [&](CowSeen& cow, const FindingRow& row) {
    if (row.visit == visit) cow.findings.push_back(&row);
  });
  add_rows(cows, input.rows.actions, [&](CowSeen& cow, const ActionRow& row) {
    if (row.visit == visit) cow.actions.push_back(&row);
  });
  add_rows(cows, input.rows.measures, [&](CowSeen& cow, const MeasureRow& row) {
    if (row.visit == visit) cow.measures.push_back(&row);
  });
  add_rows(cows, input.rows.doubts, [&](CowSeen& cow, const DoubtRow& row) {
    if (row.visit == visit) cow.doubts.push_back(&row);
  });
}

void add_history(CowsById& cows, const VisitSheetInput& input) {
  const Day day = input.visit.day;
  add_rows(cows, input.rows.cases, [&](CowSeen& cow, const CaseRow& row) {
    if (row.first_day <= day) cow.cases.push_back(&row);
  });
  add_rows(cows, input.rows.on_feet, [&](CowSeen& cow, const OnFootRow& row) {
    if (is_on(row, day)) cow.on_feet.push_back(&row);
  });
}

void add_warnings(CowsById& cows, const VisitSheetInput& input) {
  std::map<EntryId, CowSeen*> by_turn;
  for (auto& [id, cow] : cows) {
    for (const TurnRow* turn : cow.turns) by_turn[turn->turn] = &cow;
  }
  for (const TurnWarning& warning : input.warnings) {
    // What was said since has taken such a note away.
    const WarningShown& shown = warning.shown;
    if (shown.warning.rank == Rank::note && !shown.decision.empty()) continue;
    const auto found = by_turn.find(warning.turn);
    if (found != by_turn.end()) found->second->warnings.push_back(&warning.shown);
  }
}

void put_in_order(CowSeen& cow) {
  const auto by_position = [](const auto* a, const auto* b) {
    return std::tie(a->turn, a->position) < std::tie(b->turn, b->position);
  };
  std::sort(cow.findings.begin(), cow.findings.end(), by_position);
  std::sort(cow.actions.begin(), cow.actions.end(), by_position);
  std::sort(cow.measures.begin(), cow.measures.end(), by_position);
  std::sort(cow.doubts.begin(), cow.doubts.end(), by_position);
  std::sort(cow.turns.begin(), cow.turns.end(),
            [](const TurnRow* a, const TurnRow* b) { return a->turn < b->turn; });
  std::sort(cow.feet.begin(), cow.feet.end(), [](const FootRow* a, const FootRow* b) {
    return std::tie(a->turn, a->foot) < std::tie(b->turn, b->foot);
  });
  std::sort(cow.cases.begin(), cow.cases.end(), [](const CaseRow* a, const CaseRow* b) {
    return std::tie(a->first_day, a->case_id) < std::tie(b->first_day, b->case_id);
  });
  std::sort(cow.on_feet.begin(), cow.on_feet.end(), [](const OnFootRow* a, const OnFootRow* b) {
    return std::tie(a->since, a->turn, a->position) < std::tie(b->since, b->turn, b->position);
  });
}

std::vector<const NotSeenCow*> not_seen_of(const VisitSheetInput& input, const CowsById& cows,
                                           const CowNames& names) {
  std::vector<const NotSeenCow*> missing;
  for (const NotSeenCow& cow : input.not_seen) {
    if (cows.find(cow.cow) == cows.end()) missing.push_back(&cow);
  }
  std::stable_sort(missing.begin(), missing.end(), [&](const NotSeenCow* a, const NotSeenCow* b) {
    return names.before(a->cow, b->cow);
  });
  return missing;
}

/// "Still on?", of what was on her and nobody spoke of.
bool asks_about(const WarningShown& shown, const OnFootRow& row) {
  const Warning& asked = shown.warning;
  return asked.rule == still_on_rule && asked.foot == row.foot && asked.claw == row.claw;
}

const CowRow* left_among(const std::vector<CowRow>& cows, CowId id) {
  const auto found = std::find_if(cows.begin(), cows.end(), [id](const CowRow& row) {
    return row.cow == id && row.left_on.has_value();
  });
  return found == cows.end() ? nullptr : &*found;
}

/// Open tasks, a day nobody answered for as it was asked; of a cow who left what her new owner or
/// the slaughterhouse must know of.
std::vector<TaskRow> open_as_told(const VisitSheetInput& input, const CowsById& cows,
                                  const Wording& wording) {
  std::vector<TaskRow> open;
  for (const TaskRow& row : input.rows.tasks) {
    const CowRow* left = left_among(input.rows.cows, row.cow);
    const bool is_hers = left == nullptr || holds_after_leaving(row, *left, input.printed);
    if (!row.open || !is_hers) continue;
    const auto seen = cows.find(row.cow);
    const auto asked =
        seen == cows.end() ? std::nullopt : day_in_doubt(input, seen->second, row, wording);
    open.push_back(asked.value_or(row));
  }
  return open;
}

bool is_told(const WarningShown& shown) {
  return !shown.decision.empty() && shown.decision != went_ahead;
}

}  // namespace

std::vector<const TaskRow*> open_tasks_in_order(const std::vector<TaskRow>& tasks,
                                                const CowNames& names) {
  std::vector<const TaskRow*> open;
  for (const TaskRow& task : tasks) {
    if (task.open) open.push_back(&task);
  }
  std::sort(open.begin(), open.end(), [&](const TaskRow* a, const TaskRow* b) {
    if (a->due != b->due) return a->due < b->due;
    if (a->owner != b->owner) return a->owner < b->owner;
    if (a->cow != b->cow) return names.before(a->cow, b->cow);
    return std::tie(a->foot, a->kind, a->task) < std::tie(b->foot, b->kind, b->task);
  });
  return open;
}

VisitView view_of(const VisitSheetInput& input, const Wording& wording) {
  CowsById cows;
  add_turns(cows, input);
  add_visit_rows(cows, input);
  add_history(cows, input);
  add_warnings(cows, input);
  CowNames names(input.rows.cows, wording);
  auto missing = not_seen_of(input, cows, names);
  std::vector<TaskRow> open_rows = open_as_told(input, cows, wording);
  tell_sore_blocks(open_rows, wording);
  auto tasks = open_tasks_in_order(open_rows, names);
  std::vector<CowSeen> in_order;
  in_order.reserve(cows.size());
  for (auto& [id, cow] : cows) {
    put_in_order(cow);
    in_order.push_back(std::move(cow));
  }
  std::sort(in_order.begin(), in_order.end(),
            [&](const CowSeen& a, const CowSeen& b) { return names.before(a.cow, b.cow); });
  VisitView view{input,
                 wording,
                 std::move(names),
                 std::move(in_order),
                 std::move(missing),
                 std::move(tasks),
                 std::move(open_rows)};
  tell_vet_first(view);
  return view;
}

bool is_on(const OnFootRow& row, Day day) {
  const bool on = row.ended == FixtureEnd::still_on || row.ended == FixtureEnd::unknown ||
                  (row.ended_on && *row.ended_on > day);
  return on && row.since <= day;
}

bool is_on_in_doubt(const OnFootRow& row, const CowSeen* cow, Day day) {
  if (row.ended == FixtureEnd::unknown) return true;
  if (cow == nullptr || row.since == day) return false;
  return std::any_of(cow->warnings.begin(), cow->warnings.end(), [&](const WarningShown* shown) {
    return asks_about(*shown, row) && !is_told(*shown);
  });
}

bool was_seen_on(const OnFootRow& row, const CowSeen* cow, Day day) {
  if (row.since == day) return true;
  if (cow == nullptr) return false;
  const bool is_answered = std::any_of(
      cow->warnings.begin(), cow->warnings.end(),
      [&](const WarningShown* shown) { return asks_about(*shown, row) && is_told(*shown); });
  return is_answered ||
         std::any_of(cow->actions.begin(), cow->actions.end(), [&](const ActionRow* act) {
           const std::optional<FixtureSaid> said = fixture_said(act->action);
           const bool is_it = said && said->fixture == row.fixture && act->foot == row.foot;
           return is_it && is_on_after(said->step) && claws_agree(act->claw, row.claw);
         });
}

const CowRow* who_left(const VisitView& view, CowId cow) {
  return left_among(view.input.rows.cows, cow);
}

const CowSeen* find_cow(const VisitView& view, CowId cow) {
  for (const CowSeen& seen : view.cows) {
    if (seen.cow == cow) return &seen;
  }
  return nullptr;
}

const ProductStated* stated_of(const VisitView& view, const ActionRow& row) {
  for (const ProductStated& stated : view.input.stated) {
    if (stated.turn == row.turn && stated.product == row.listed) return &stated;
  }
  return nullptr;
}

bool is_spoken_of(const CowSeen& cow, Foot foot) {
  return std::any_of(cow.feet.begin(), cow.feet.end(),
                     [&](const FootRow* row) { return row->foot == foot; });
}

FootState state_of(const CowSeen& cow, Foot foot) {
  std::optional<FootState> most;
  for (const FootRow* row : cow.feet) {
    if (row->foot != foot) continue;
    if (!most || rank_of(row->state) > rank_of(*most)) most = row->state;
  }
  return most.value_or(FootState::unsaid);
}

bool counts_as_found(ActionKind kind) {
  return is_found_on_foot(kind) || kind == ActionKind::sore_mouth || kind == ActionKind::fever;
}

bool has_something(const CowSeen& cow) {
  const bool is_found =
      std::any_of(cow.findings.begin(), cow.findings.end(),
                  [](const FindingRow* row) { return counts_as_found(row->lesion); });
  return is_found || std::any_of(cow.actions.begin(), cow.actions.end(),
                                 [](const ActionRow* row) { return counts_as_found(row->action); });
}

bool is_known_what_was_found(const CowSeen& cow) {
  if (has_something(cow)) return true;
  return !cow.lifted.empty() && std::none_of(all_feet.begin(), all_feet.end(), [&](Foot foot) {
    return cow.lifted.has(foot) && state_of(cow, foot) == FootState::unsaid;
  });
}

bool is_told_why_she_came(const CowSeen& cow) {
  return std::any_of(cow.turns.begin(), cow.turns.end(), [](const TurnRow* turn) {
    return turn->reason != Reason::not_called || turn->came_lame;
  });
}

FootSet feet_not_judged(const CowSeen& cow) {
  FootSet feet;
  for (const Foot foot : all_feet) {
    if (cow.lifted.has(foot) || !is_spoken_of(cow, foot)) continue;
    const bool is_found = std::any_of(
        cow.actions.begin(), cow.actions.end(),
        [foot](const ActionRow* row) { return row->foot == foot && counts_as_found(row->action); });
    if (state_of(cow, foot) == FootState::unsaid && !is_found) feet.add(foot);
  }
  return feet;
}

std::size_t feet_lifted(const VisitView& view) {
  std::size_t feet = 0;
  for (const CowSeen& cow : view.cows) feet += static_cast<std::size_t>(cow.lifted.count());
  return feet;
}

FootSet unsaid_feet(const CowSeen& cow, const FootSet& todays_feet) {
  FootSet unsaid;
  for (const Foot foot : all_feet) {
    if (!todays_feet.has(foot) || cow.lifted.has(foot) || is_spoken_of(cow, foot)) continue;
    unsaid.add(foot);
  }
  return unsaid;
}

}  // namespace evenclaw
