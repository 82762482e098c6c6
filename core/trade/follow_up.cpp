#include "core/trade/follow_up.hpp"

#include <algorithm>
#include <iterator>
#include <string>
#include <utility>

#include "core/trade/block_lost_early.hpp"
#include "core/trade/checks/situation.hpp"
#include "core/trade/follow_up_decided.hpp"
#include "core/trade/follow_up_looks.hpp"
#include "core/trade/follow_up_rules.hpp"
#include "core/trade/lesion.hpp"
#include "core/trade/on_foot.hpp"
#include "core/trade/second_failure.hpp"
#include "core/trade/visit_so_far.hpp"
#include "core/trade/withdrawal_tasks.hpp"

namespace evenclaw {

namespace {

void put(std::vector<TaskMade>& tasks, const TaskMade& task) {
  const auto same = std::find_if(tasks.begin(), tasks.end(), [&](const TaskMade& other) {
    return other.rule == task.rule && other.foot == task.foot && other.claw == task.claw;
  });
  if (same == tasks.end()) {
    tasks.push_back(task);
  } else {
    *same = task;
  }
}

bool same_claw_or_unsaid(Claw a, Claw b) {
  return a == b || !is_called(a) || !is_called(b);
}

/// A block is there to stack on: put on in this turn, or before it and not said to be off.
bool is_known_block(const Rows& past, const FootCall& call, Claw claw) {
  bool off_today = false;
  for (const Action& action : call.actions) {
    const std::optional<FixtureSaid> said = fixture_said(action.kind);
    if (!said || said->fixture != Fixture::block) continue;
    if (!same_claw_or_unsaid(claw_meant(past, call, action), claw)) continue;
    if (said->step == FixtureStep::put_on || said->step == FixtureStep::renewed) return true;
    off_today = off_today || is_off_after(said->step);
  }
  if (off_today) return false;
  const std::vector<OnFootRow> left = fixtures_left(past, call.foot, Fixture::block);
  return std::any_of(left.begin(), left.end(), [&](const OnFootRow& row) {
    return row.ended == FixtureEnd::still_on && same_claw_or_unsaid(row.claw, claw);
  });
}

/// The act starts a block or wrap that has no tasks yet.
bool starts_fixture(const Rows& past, const FootCall& call, const Action& action) {
  const std::optional<FixtureSaid> said = fixture_said(action.kind);
  if (!said) return false;
  switch (said->step) {
    case FixtureStep::put_on:
    case FixtureStep::renewed:
      return true;
    case FixtureStep::stacked:
      return !is_known_block(past, call, claw_meant(past, call, action));
    case FixtureStep::taken_off:
    case FixtureStep::came_off:
    case FixtureStep::left_on:
    case FixtureStep::not_known:
      return false;
  }
  return false;
}

/// "Still on, off Thu": what stays on has a new day on which it comes off.
bool moves_day_off(const Action& action) {
  const std::optional<FixtureSaid> said = fixture_said(action.kind);
  if (!said || !action.when.said()) return false;
  return said->step == FixtureStep::left_on || said->step == FixtureStep::stacked;
}

/// "Block still on", and nobody knew of one.
bool is_seen_first(const Rows& past, const FootCall& call, const Action& action, Day visit_day) {
  const std::optional<FixtureSaid> said = fixture_said(action.kind);
  if (!said || said->step != FixtureStep::left_on) return false;
  if (is_known_on(past, call.foot, said->fixture, visit_day)) return false;
  // Put on in this turn, or given its day, it has its tasks.
  return std::none_of(call.actions.begin(), call.actions.end(), [&](const Action& other) {
    const std::optional<FixtureSaid> told = fixture_said(other.kind);
    if (!told || told->fixture != said->fixture) return false;
    return moves_day_off(other) || (is_on_after(told->step) && told->step != FixtureStep::left_on);
  });
}

/// Some claw under the block hurts, be it said of that claw or of both.
bool is_on_pain(const FootCall& call, Claw claw) {
  const auto is_under = [&](Claw one) {
    return (claw == one || claw == Claw::both) && painful_finding(call, one) != nullptr;
  };
  return is_under(Claw::outside) || is_under(Claw::inside);
}

void put_fixture_tasks(std::vector<TaskMade>& tasks, const Rows& past, const FootCall& call,
                       const Action& action, Day visit_day) {
  const bool starts = starts_fixture(past, call, action);
  if (!starts && !moves_day_off(action)) {
    if (!is_seen_first(past, call, action, visit_day)) return;
    const Fixture fixture = fixture_said(action.kind)->fixture;
    const Claw claw = is_called(action.claw) ? action.claw : Claw::none;
    return put(tasks, since_when(fixture, {call.foot, claw, {}}, visit_day));
  }
  Aim aim = {call.foot, Claw::none, day_meant(action.when, visit_day)};
  if (fixture_said(action.kind)->fixture == Fixture::wrap) {
    put(tasks, task_from(wrap_off_rule, aim, visit_day));
    return;
  }
  aim.claw = claw_meant(past, call, action);
  const TaskMade off = task_from(block_off_rule, aim, visit_day);
  for (const FollowUpRule& rule : {block_first_look_rule, block_check_rule}) {
    const TaskMade look = task_from(rule, {aim.foot, aim.claw, {}}, visit_day);
    // A block said to come off before a look is due needs none.
    if (starts && (!aim.said || look.due < off.due)) put(tasks, look);
  }
  put(tasks, off);
  const bool hurts_her = starts && is_on_pain(call, aim.claw);
  if (hurts_her) put(tasks, task_from(block_on_pain_rule, {aim.foot, aim.claw, {}}, visit_day));
}

/// Whether a foot the vet is called to, or some foot when he is called to her, was treated twice.
bool is_second_failure(const Turn& turn, const Rows& past, std::optional<Foot> foot, Day today) {
  return std::any_of(turn.feet.begin(), turn.feet.end(), [&](const FootCall& call) {
    return (!foot || call.foot == *foot) && fails_again(past, call, today);
  });
}

struct CalledAct {
  const Action& action;
  std::optional<Foot> foot;
};

/// Acts that may concern a foot or the whole cow.
void put_call_tasks(std::vector<TaskMade>& tasks, const Turn& turn, const Rows& past,
                    const CalledAct& called, Day visit_day) {
  const Aim aim = {called.foot, Claw::none, day_meant(called.action.when, visit_day)};
  switch (decision_on(called.action.kind).follow_up) {
    case ActFollowUp::look:
      put(tasks, task_from(see_again_rule, aim, visit_day));
      break;
    case ActFollowUp::walk:
      put(tasks, task_from(watch_her_walk_rule, {{}, Claw::none, aim.said}, visit_day));
      break;
    case ActFollowUp::vet: {
      TaskMade vet = task_from(vet_rule, aim, visit_day);
      if (is_second_failure(turn, past, called.foot, visit_day)) vet.words += ": it does not heal";
      put(tasks, vet);
      break;
    }
    case ActFollowUp::pain_relief:
      if (!was_called(turn, ActionKind::pain_relief_given)) {
        put(tasks, task_from(pain_relief_rule, {{}, Claw::none, {}}, visit_day));
      }
      break;
    case ActFollowUp::block_on:
    case ActFollowUp::block_kept:
    case ActFollowUp::block_off:
    case ActFollowUp::wrap_on:
    case ActFollowUp::wrap_kept:
    case ActFollowUp::wrap_off:
    case ActFollowUp::look_after_dd:
    case ActFollowUp::look_after_cut:
    case ActFollowUp::withdrawal:
    case ActFollowUp::none:
      break;
  }
}

struct ToldAct {
  ActionKind kind;
  std::string_view words;
};

// Acts that end or move the task of a wrap or block.
constexpr ToldAct told_acts[] = {{ActionKind::block_on, "new block on"},
                                 {ActionKind::block_refitted, "block refitted"},
                                 {ActionKind::block_again, "blocked again"},
                                 {ActionKind::block_off, "block taken off"},
                                 {ActionKind::block_came_off, "block came off by itself"},
                                 {ActionKind::block_still_on, "block still on"},
                                 {ActionKind::block_stacked, "block stacked"},
                                 {ActionKind::wrap_still_on, "wrap still on"},
                                 {ActionKind::wrap_on, "new wrap on"},
                                 {ActionKind::wrap_off, "wrap taken off"},
                                 {ActionKind::wrap_came_off, "wrap came off by itself"}};

/// "" for an act that ends no such task.
std::string_view told_as(ActionKind kind) {
  const auto row = std::find_if(std::begin(told_acts), std::end(told_acts),
                                [&](const ToldAct& act) { return act.kind == kind; });
  return row == std::end(told_acts) ? std::string_view() : row->words;
}

/// The act ends this task: what it asks for is done, no longer there to be done, or has a new day.
bool act_ends_task(const Action& action, const TaskRow& task, Day visit_day) {
  const bool is_check = task.kind == TaskKind::block_check;
  switch (fixture_said(action.kind)->step) {
    case FixtureStep::put_on:
    case FixtureStep::renewed:
    case FixtureStep::taken_off:
    case FixtureStep::came_off:
      return true;
    case FixtureStep::left_on:
      return is_check ? visit_day >= task.earliest : moves_day_off(action);
    case FixtureStep::stacked: {
      // It is still on; that the claw under it was looked at is the trimmer's to say.
      const bool asks_if_on = is_check && task.owner == Owner::farmer;
      return asks_if_on ? visit_day >= task.earliest : !is_check && moves_day_off(action);
    }
    case FixtureStep::not_known:
      return false;
  }
  return false;
}

bool claw_fits_task(Claw meant, const std::vector<TaskRow>& open, const TaskRow& task) {
  if (!is_called(meant)) return claws_of_block_tasks(open, *task.foot).size() == 1;
  return meant == Claw::both || same_claw_or_unsaid(meant, task.claw);
}

void close_by_act(std::vector<TaskClosed>& closed, const FootCall& call, const Action& action,
                  const Rows& past, Day visit_day) {
  const std::optional<FixtureSaid> said = fixture_said(action.kind);
  if (!said) return;
  const std::vector<TaskRow> open = open_tasks(past);
  const Claw meant = claw_meant(past, call, action);
  const bool tells_where = is_off_after(said->step) || said->step == FixtureStep::left_on;
  for (const TaskRow& task : open) {
    if (tells_where && is_somewhere_on_her(said->fixture, task)) {
      close_task(closed, task, told_as(action.kind));
    }
    if (task.foot != call.foot) continue;
    const bool is_on = said->fixture == Fixture::block && is_on_after(said->step);
    if (is_on && is_of_lost_block(task)) close_task(closed, task, told_as(action.kind));
    if (!is_task_of(said->fixture, task.kind)) continue;
    if (!act_ends_task(action, task, visit_day)) continue;
    // A new block whose side nobody called may stand beside the old one.
    if (action.kind == ActionKind::block_on && !is_called(meant)) continue;
    if (said->fixture == Fixture::block && !claw_fits_task(meant, open, task)) continue;
    close_task(closed, task, told_as(action.kind));
  }
}

std::string looked_at_as(const FootCall& call) {
  if (call.findings.empty()) return "looked at, nothing found";
  const Finding& first = call.findings.front();
  const bool named_by_words = is_named_by_words(first.lesion) && !first.words.empty();
  return "looked at, " + (named_by_words ? first.words : std::string(facts_of(first.lesion).name));
}

void close_looks(std::vector<TaskClosed>& closed, const FootCall& call, const Rows& past,
                 Day visit_day) {
  if (!was_looked_at(call)) return;
  for (const TaskRow& task : open_tasks(past)) {
    const bool this_foot = !task.foot || *task.foot == call.foot;
    const bool is_anew = follows_from_finding(task) && visit_day > task.made_on;
    const bool is_time = visit_day >= task.earliest || is_anew;
    if (task.kind == TaskKind::look_at_foot && this_foot && is_time) {
      close_task(closed, task, looked_at_as(call));
    }
  }
}

/// With a block on that foot its own looks stand for those after open horn.
void close_looks_for_block(std::vector<TaskClosed>& closed, const FootCall& call,
                           const Rows& past) {
  const auto block = std::find_if(call.actions.begin(), call.actions.end(), [](const Action& act) {
    return decision_on(act.kind).follow_up == ActFollowUp::block_on;
  });
  if (block == call.actions.end()) return;
  for (const TaskRow& task : open_tasks(past)) {
    if (task.foot == call.foot && follows_from_open_horn(task)) {
      close_task(closed, task, told_as(block->kind));
    }
  }
}

/// What was seen of her walk at this visit; "" when nothing was called of it.
std::string walk_seen(const Turn& turn) {
  if (turn.walks_sound) return "walks sound";
  if (came_for(turn, Reason::lame) || !turn.lame.empty()) return "came lame";
  if (!turn.mobility.said()) return {};
  return "walk scored " + std::to_string(*turn.mobility.score) + " of " +
         std::to_string(facts_of(*turn.mobility.scale).highest);
}

void close_watching(std::vector<TaskClosed>& closed, const Turn& turn, const Rows& past,
                    Day visit_day) {
  const std::string seen = walk_seen(turn);
  if (seen.empty()) return;
  for (const TaskRow& task : open_tasks(past)) {
    const bool is_time = turn.walks_sound || visit_day >= task.earliest;
    if (task.kind == TaskKind::watch_her_walk && is_time) close_task(closed, task, seen);
  }
}

using SameClaw = bool (*)(Claw, Claw);

bool same_claw_called(Claw a, Claw b) {
  return a == b;
}

/// The first that says the same of the same foot and claw.
std::vector<TaskMade>::iterator same_task(std::vector<TaskMade>& tasks, const TaskMade& wanted,
                                          SameClaw same_claw) {
  return std::find_if(tasks.begin(), tasks.end(), [&](const TaskMade& task) {
    return task.rule == wanted.rule && task.kind == wanted.kind && task.foot == wanted.foot &&
           same_claw(task.claw, wanted.claw);
  });
}

}  // namespace

std::vector<TaskMade> tasks_made(const Turn& turn, const CowPast& past, Day visit_day,
                                 EntryId first) {
  std::vector<TaskMade> tasks;
  for (const FootCall& call : turn.feet) {
    for (const Action& action : call.actions) {
      put_call_tasks(tasks, turn, past.rows, {action, call.foot}, visit_day);
      put_fixture_tasks(tasks, past.rows, call, action, visit_day);
    }
  }
  for (const Action& action : turn.actions) {
    put_call_tasks(tasks, turn, past.rows, {action, std::nullopt}, visit_day);
  }
  for (const TaskMade& look : looks_asked_for(turn, past.rows, tasks, visit_day)) put(tasks, look);
  for (TaskMade& task : withdrawal_tasks(turn, visit_day)) tasks.push_back(std::move(task));
  name_tasks(tasks, first);
  return tasks;
}

std::vector<TaskMade> with_ids_kept(std::vector<TaskMade> tasks, std::span<const TaskMade> before) {
  std::vector<TaskMade> left(before.begin(), before.end());
  std::vector<bool> kept(tasks.size(), false);
  for (const SameClaw same_claw : {&same_claw_called, &same_claw_or_unsaid}) {
    for (std::size_t i = 0; i < tasks.size(); ++i) {
      if (kept[i]) continue;
      const auto at = same_task(left, tasks[i], same_claw);
      if (at == left.end()) continue;
      tasks[i].task = at->task;
      kept[i] = true;
      left.erase(at);
    }
  }
  return tasks;
}

std::vector<TaskClosed> tasks_closed(const Turn& turn, const CowPast& past, Day visit_day) {
  std::vector<TaskClosed> closed;
  for (const FootCall& call : turn.feet) {
    for (const Action& action : call.actions) {
      close_by_act(closed, call, action, past.rows, visit_day);
    }
    close_looks(closed, call, past.rows, visit_day);
    close_looks_for_block(closed, call, past.rows);
  }
  for (const TaskRow& task : open_tasks(past.rows)) {
    const bool is_over = task.kind == TaskKind::withdrawal_end && visit_day >= task.overdue;
    if (is_over) close_task(closed, task, "its time is over");
  }
  close_watching(closed, turn, past.rows, visit_day);
  return closed;
}

}  // namespace evenclaw
