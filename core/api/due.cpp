#include "core/api/due.hpp"

#include <algorithm>
#include <map>
#include <tuple>
#include <utility>

#include "core/api/cow_names.hpp"
#include "core/api/herds.hpp"
#include "core/api/routine_trims.hpp"
#include "core/api/tasks_as_told.hpp"
#include "core/trade/after_leaving.hpp"
#include "core/trade/cow_rows.hpp"
#include "core/trade/follow_up.hpp"
#include "core/trade/routine_trim.hpp"
#include "core/trade/task_rows.hpp"

namespace evenclaw {

namespace {

using CowKey = std::pair<HerdId, CowId>;

Result<std::map<CowKey, CowRow>> cows_by_key(Store& store, std::optional<HerdId> herd) {
  auto rows = select_as<CowRow>(store, herd);
  if (!rows) return rows.faults();
  std::map<CowKey, CowRow> cows;
  for (CowRow& row : *rows) {
    const CowKey key{row.herd, row.cow};
    cows.emplace(key, std::move(row));
  }
  return cows;
}

std::string source_of(const TaskRow& row) {
  for (const FollowUpRule& rule : all_follow_up_rules()) {
    if (rule.slug == row.rule && rule.version == row.rule_version) return std::string(rule.source);
  }
  for (const RoutineTrimRule& rule : all_routine_trim_rules()) {
    if (rule.slug == row.rule && rule.version == row.rule_version) return std::string(rule.source);
  }
  return {};
}

DueTask due_task(const TaskRow& row, Day today) {
  DueTask task;
  task.herd = row.herd;
  task.cow = row.cow;
  task.task = row.task;
  task.kind = row.kind;
  task.foot = row.foot;
  task.claw = row.claw;
  task.owner = row.owner;
  task.words = row.words;
  task.made_on = row.made_on;
  task.earliest = row.earliest;
  task.due = row.due;
  task.overdue = row.overdue;
  task.source = source_of(row);
  task.state = due_state(row.earliest, row.overdue, today);
  if (task.state == DueState::overdue) task.days_late = today - row.overdue + 1;
  return task;
}

void count(DueList& list, DueState state) {
  switch (state) {
    case DueState::overdue:
      ++list.overdue;
      break;
    case DueState::due:
      ++list.due;
      break;
    case DueState::coming:
      ++list.coming;
      break;
  }
}

bool comes_first(const DueTask& a, const DueTask& b) {
  const bool a_later = !is_held_back(a);
  const bool b_later = !is_held_back(b);
  return std::tie(a.herd_name, a.herd, a_later, a.due, a.owner, a.cow_said, a.cow, a.words,
                  a.task) <
         std::tie(b.herd_name, b.herd, b_later, b.due, b.owner, b.cow_said, b.cow, b.words, b.task);
}

}  // namespace

bool is_held_back(const DueTask& task) {
  return task.kind == TaskKind::withdrawal_end && task.state != DueState::overdue;
}

DueState due_state(Day earliest, Day overdue, Day today) {
  if (today >= overdue) return DueState::overdue;
  return today >= earliest ? DueState::due : DueState::coming;
}

Result<DueList> list_due(Store& store, std::optional<HerdId> herd, Day today) {
  auto rows = select_as<TaskRow>(store, herd, {{"open", Compare::equal, Cell(std::int64_t{1})}});
  if (!rows) return rows.faults();
  const Outcome as_told = tell_open_tasks(store, herd, today, *rows);
  if (!as_told) return as_told.faults();
  const auto cows = cows_by_key(store, herd);
  if (!cows) return cows.faults();
  const auto herds = all_herds(store);
  if (!herds) return herds.faults();
  std::map<HerdId, std::string> names;
  for (const Herd& known : *herds) names[known.herd] = known.name;
  DueList list;
  list.today = today;
  auto careful = careful_with(store, herd);
  if (!careful) return careful.faults();
  list.careful = *std::move(careful);
  const auto trims = routine_trims(store, herd, today);
  if (!trims) return trims.faults();
  rows->insert(rows->end(), trims->begin(), trims->end());
  for (const TaskRow& row : *rows) {
    const auto cow = cows->find({row.herd, row.cow});
    const bool has_left = cow != cows->end() && cow->second.left_on.has_value();
    if (has_left && !holds_after_leaving(row, cow->second, today)) continue;
    DueTask task = due_task(row, today);
    task.herd_name = names[task.herd];
    if (cow != cows->end()) task.cow_said = recorded_as(cow->second);
    if (has_left) task.words = words_after_leaving(row, cow->second);
    count(list, task.state);
    list.tasks.push_back(std::move(task));
  }
  std::sort(list.tasks.begin(), list.tasks.end(), comes_first);
  return list;
}

}  // namespace evenclaw
