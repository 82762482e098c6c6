#include "core/api/days_asked.hpp"

#include <optional>
#include <set>

#include "core/log/bodies.hpp"
#include "core/log/body.hpp"
#include "core/sheets/days_in_doubt.hpp"
#include "core/sheets/words.hpp"
#include "core/trade/cow_rows.hpp"
#include "core/trade/follow_up_rules.hpp"

namespace evenclaw {

namespace {

/// Only a day that was said is asked about; the day of the rule is not.
bool is_for_a_day_said(const TaskRow& task) {
  const bool is_wrap = task.rule == wrap_off_rule.slug;
  if (!is_wrap && task.rule != block_off_rule.slug) return false;
  const FollowUpRule& rule = is_wrap ? wrap_off_rule : block_off_rule;
  return task.open && task.due != task.made_on + rule.due_days;
}

/// What was asked in her turns of the visit that made the task.
Result<std::vector<WarningShown>> asked_with(Store& store, const TaskRow& task) {
  std::vector<WarningShown> asked;
  const auto turns = select_as<TurnRow>(store, task.herd,
                                        {{"cow", Compare::equal, Cell(to_text(task.cow))},
                                         {"visit", Compare::equal, Cell(to_text(task.visit))}});
  if (!turns) return turns.faults();
  for (const TurnRow& turn : *turns) {
    const auto entry = store.find_entry(turn.turn);
    if (!entry) return entry.faults();
    const auto body = *entry ? body_as<TurnRecorded>(**entry) : std::nullopt;
    if (body) asked.insert(asked.end(), body->warnings.begin(), body->warnings.end());
  }
  return asked;
}

std::optional<TaskRow> told_in_doubt(const TaskRow& task, const std::vector<WarningShown>& asked) {
  VisitSheetInput input;
  input.visit.visit = task.visit;
  input.visit.day = task.made_on;
  CowSeen cow;
  cow.cow = task.cow;
  for (const WarningShown& shown : asked) cow.warnings.push_back(&shown);
  return day_in_doubt(input, cow, task, english_wording());
}

/// Whoever moved a task by hand has settled its day.
Result<std::set<TaskId>> moved_by_hand(Store& store, HerdId herd) {
  std::set<TaskId> moved;
  const Outcome read = store.read_entries(
      {herd.value, std::nullopt, {std::string(TaskMoved::kind)}}, [&](const Entry& entry) {
        const auto body = body_as<TaskMoved>(entry);
        if (body) moved.insert(body->task);
        return true;
      });
  if (!read) return read.faults();
  return moved;
}

}  // namespace

Outcome tell_days_in_doubt(Store& store, std::vector<TaskRow>& tasks) {
  for (TaskRow& task : tasks) {
    if (!is_for_a_day_said(task)) continue;
    const auto asked = asked_with(store, task);
    if (!asked) return asked.faults();
    const std::optional<TaskRow> told = told_in_doubt(task, *asked);
    if (!told) continue;
    const auto moved = moved_by_hand(store, task.herd);
    if (!moved) return moved.faults();
    if (moved->count(task.task) == 0) task = *told;
  }
  return Done{};
}

}  // namespace evenclaw
