#include "core/api/task_calendar.hpp"

#include <algorithm>
#include <map>
#include <tuple>
#include <utility>
#include <vector>

#include "core/api/cow_names.hpp"
#include "core/api/tasks_as_told.hpp"
#include "core/exchange/calendar.hpp"
#include "core/trade/after_leaving.hpp"
#include "core/trade/cow_rows.hpp"
#include "core/trade/task_rows.hpp"

namespace evenclaw {

namespace {

bool is_told(const TaskRow& task, Day today) {
  return task.open || std::max(task.due, task.earliest) + cancelled_told_days >= today;
}

bool is_due_before(const CalendarTask& a, const CalendarTask& b) {
  return std::tie(a.task.due, a.cow, a.task.task) < std::tie(b.task.due, b.cow, b.task.task);
}

}  // namespace

Result<TaskCalendar> task_calendar(const Ports& ports, const Herd& herd, std::optional<Owner> owner,
                                   Day today) {
  const auto cows = select_as<CowRow>(ports.store, herd.herd);
  if (!cows) return cows.faults();
  const auto tasks = select_as<TaskRow>(ports.store, herd.herd);
  if (!tasks) return tasks.faults();
  std::vector<TaskRow> as_told = *tasks;
  const Outcome telling = tell_open_tasks(ports.store, herd.herd, today, as_told);
  if (!telling) return telling.faults();
  const auto sequence = ports.store.last_order(herd.herd.value);
  if (!sequence) return sequence.faults();
  std::map<CowId, const CowRow*> by_id;
  for (const CowRow& cow : *cows) by_id[cow.cow] = &cow;
  TaskCalendar made;
  std::vector<CalendarTask> told;
  for (std::size_t at = 0; at < as_told.size(); ++at) {
    TaskRow task = as_told[at];
    if (owner && task.owner != *owner) continue;
    const auto cow = by_id.find(task.cow);
    if (cow == by_id.end()) continue;
    const bool has_left = cow->second->left_on.has_value();
    if (has_left && !holds_after_leaving(task, *cow->second, today)) task.open = false;
    if (!is_told(task, today)) continue;
    ++(task.open ? made.open : made.cancelled);
    const bool is_as_ordered = at < tasks->size() && task.words == (*tasks)[at].words;
    const std::string words = is_as_ordered ? std::string() : task.words;
    told.push_back({std::move(task), recorded_as(*cow->second), words});
  }
  std::sort(told.begin(), told.end(), is_due_before);
  made.file = calendar_file({herd.name, *sequence, ports.clock.now()}, told);
  return made;
}

}  // namespace evenclaw
