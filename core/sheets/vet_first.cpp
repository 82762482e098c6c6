#include "core/sheets/vet_first.hpp"

#include <algorithm>

#include "core/sheets/left_for_vet.hpp"
#include "core/sheets/task_blocks.hpp"
#include "core/sheets/vet_calls.hpp"
#include "core/sheets/vet_urgency.hpp"
#include "core/trade/block_lost_early.hpp"

namespace evenclaw {

namespace {

/// He is to see that foot, or her, and not only to be asked about.
bool is_any_call_to(const std::vector<VetCall>& calls, std::optional<Foot> foot) {
  return std::any_of(calls.begin(), calls.end(), [&](const VetCall& call) {
    const bool is_order = call.is_to_see_her && !call.is_only_asked;
    return is_order && (!call.foot || !foot || call.foot == foot);
  });
}

bool is_left_there(const VisitView& view, const TaskRow& task, Saying saying) {
  const CowSeen* cow = find_cow(view, task.cow);
  std::vector<std::string> left = left_from_before(view, task.cow, task.foot);
  if (cow != nullptr) {
    const std::vector<std::string> today = left_for_vet(view, *cow, task.foot);
    left.insert(left.end(), today.begin(), today.end());
  }
  return std::find(left.begin(), left.end(), view.wording.say(saying)) != left.end();
}

/// What the farm is to look at, without a condition; "" of any other task.
std::string bare_look(const TaskRow& task, const Wording& wording) {
  if (task.owner != Owner::farmer) return {};
  if (task.kind == TaskKind::watch_her_walk) return task_words(task.kind, task.foot, task.claw);
  if (task.kind != TaskKind::look_at_foot) return {};
  if (is_of_lost_block(task)) return task.words;
  return task.foot ? wording.say(BoxSaying::look_again, {{"foot", wording.foot(*task.foot)}})
                   : wording.say(BoxSaying::look_at_her_again);
}

/// What she is told to get, without a condition; "" of what goes with the vet's box as it is.
std::string bare_order(const VisitView& view, const TaskRow& task) {
  if (task.owner != Owner::farmer) return {};
  if (std::string look = bare_look(task, view.wording); !look.empty()) return look;
  const bool is_wrap = task.kind == TaskKind::wrap_off && task.foot;
  const bool is_kept = is_wrap && is_left_there(view, task, Saying::leave_foot_alone);
  return is_kept ? task.words : std::string();
}

/// A wrap on blood that does not stop may be what presses on it, and cuts in where it stays; foul
/// wants air. Both are settled today, whatever day was said.
std::string wrap_of_today(const VisitView& view, const TaskRow& task) {
  if (task.kind != TaskKind::wrap_off || !task.foot || task.owner != Owner::farmer) return {};
  const bool bleeds = is_left_there(view, task, Saying::stop_bleeding);
  const bool is_foul = is_left_there(view, task, Saying::no_wrap_on_foul);
  if (!bleeds && !is_foul) return {};
  return view.wording.say(bleeds ? BoxSaying::wrap_off_bleeding : BoxSaying::wrap_off_foul,
                          {{"what", task.words}});
}

void move_to(TaskRow& task, Day today) {
  task.earliest = std::min(task.earliest, today);
  task.due = std::min(task.due, today);
  task.overdue = std::min(task.overdue, task.due + 1);
}

void tell_beside_box(const VisitView& view, TaskRow& task) {
  const std::string what = bare_order(view, task);
  if (!what.empty()) {
    task.words = view.wording.say(BoxSaying::vet_first, {{"what", what}});
    return;
  }
  std::string wrap = wrap_of_today(view, task);
  if (wrap.empty()) return;
  task.words = std::move(wrap);
  move_to(task, view.input.printed);
}

bool is_vet_asked_there(const std::vector<TaskRow>& tasks, const TaskRow& look) {
  return std::any_of(tasks.begin(), tasks.end(), [&](const TaskRow& task) {
    const bool is_to_see = task.open && task.kind == TaskKind::vet && !is_for_pain_relief(task);
    const bool is_hers = task.herd == look.herd && task.cow == look.cow;
    return is_to_see && is_hers && (!task.foot || !look.foot || task.foot == look.foot);
  });
}

}  // namespace

void tell_vet_asked_first(std::vector<TaskRow>& tasks, const Wording& wording) {
  for (TaskRow& task : tasks) {
    const std::string look = task.open ? bare_look(task, wording) : std::string();
    if (look.empty() || !is_vet_asked_there(tasks, task)) continue;
    task.words = wording.say(BoxSaying::vet_asked_first, {{"what", look}});
  }
}

void tell_vet_first(VisitView& view) {
  for (const CowForVet& called : cows_for_vet(view)) {
    const std::vector<VetCall> calls = vet_calls(view, called.cow);
    for (TaskRow& task : view.open_rows) {
      if (task.cow != called.cow || !is_any_call_to(calls, task.foot)) continue;
      tell_beside_box(view, task);
    }
  }
  view.tasks = open_tasks_in_order(view.open_rows, view.names);
}

}  // namespace evenclaw
