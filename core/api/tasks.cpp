#include "core/api/tasks.hpp"

#include <optional>
#include <utility>

#include "core/api/identities.hpp"
#include "core/api/journal.hpp"
#include "core/base/text.hpp"
#include "core/log/bodies.hpp"
#include "core/trade/task_rows.hpp"

namespace evenclaw {

namespace {

Fault wrongly_asked(std::string message) {
  return {.slug = "usage", .message = std::move(message)};
}

Result<TaskRow> open_task(Store& store, HerdId herd, TaskId task) {
  const auto rows =
      select_as<TaskRow>(store, herd, {{"task", Compare::equal, Cell(to_text(task))}});
  if (!rows) return rows.faults();
  if (rows->empty()) return wrongly_asked("There is no task " + to_text(task) + ".");
  const TaskRow& row = rows->front();
  if (row.open) return row;
  std::string when = row.closed_on ? " on " + to_text(*row.closed_on) : std::string();
  return wrongly_asked("That task was closed" + when + ": " + row.closed_how + ".");
}

}  // namespace

News nearest_news(TaskKind kind) {
  switch (kind) {
    case TaskKind::wrap_off:
      return News::wrap_off;
    case TaskKind::block_off:
      return News::block_off;
    case TaskKind::block_check:
    case TaskKind::look_at_foot:
    case TaskKind::withdrawal_end:
    case TaskKind::routine_trim:
      return News::looked_at;
    case TaskKind::watch_her_walk:
      return News::walks_sound;
    case TaskKind::vet:
      return News::vet_came;
  }
  return News::looked_at;
}

Result<std::vector<DueTask>> open_tasks_of(Store& store, HerdId herd, std::string_view cow,
                                           Day today) {
  const auto found = find_cow(store, herd, cow, today);
  if (!found) return found.faults();
  const auto list = list_due(store, herd, today);
  if (!list) return list.faults();
  std::vector<DueTask> tasks;
  for (const DueTask& task : list->tasks) {
    if (task.cow == *found && task.kind != TaskKind::routine_trim) tasks.push_back(task);
  }
  return tasks;
}

Result<EntryId> close_task(const Ports& ports, HerdId herd, TaskId task, std::string_view words,
                           std::optional<Day> day) {
  if (trimmed(words).empty()) return wrongly_asked("Say how it was settled.");
  const auto row = open_task(ports.store, herd, task);
  if (!row) return row.faults();
  TaskClosedBody body;
  body.cow = row->cow;
  body.day = day.value_or(day_of(ports.clock.now()));
  body.news = nearest_news(row->kind);
  if (row->foot) body.feet.add(*row->foot);
  body.words = trimmed(words);
  body.closes = {{task, body.words}};
  return write_one(ports, herd.value, body, {});
}

Result<EntryId> move_task(const Ports& ports, HerdId herd, TaskId task, Day due,
                          std::string_view words) {
  const auto row = open_task(ports.store, herd, task);
  if (!row) return row.faults();
  if (due < row->made_on) {
    return wrongly_asked("It was made on " + to_text(row->made_on) +
                         " and cannot be due before that.");
  }
  if (row->kind == TaskKind::withdrawal_end && due < row->due) {
    return wrongly_asked("Her milk or meat is held back up to and with " + to_text(row->due) +
                         "; the end that was stated is never made earlier.");
  }
  TaskMoved body;
  body.cow = row->cow;
  body.task = task;
  body.due = due;
  body.overdue = due + (row->overdue - row->due);
  body.words = trimmed(words);
  return write_one(ports, herd.value, body, {});
}

}  // namespace evenclaw
