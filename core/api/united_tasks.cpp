#include "core/api/united_tasks.hpp"

#include <algorithm>
#include <iterator>
#include <span>
#include <vector>

#include "core/api/cow_names.hpp"
#include "core/api/herd_log.hpp"
#include "core/api/tasks.hpp"
#include "core/log/bodies.hpp"
#include "core/log/body.hpp"
#include "core/trade/cow_rows.hpp"
#include "core/trade/follow_up.hpp"
#include "core/trade/task_rows.hpp"

namespace evenclaw {

namespace {

Outcome add_closing(Journal& journal, const TurnRecorded& turn, const TaskRow& task,
                    const std::string& how, Day day) {
  TaskClosedBody body;
  body.cow = turn.cow;
  body.visit = turn.visit;
  body.day = day;
  body.news = nearest_news(task.kind);
  if (task.foot) body.feet.add(*task.foot);
  body.words = how + ", called as " + recorded_as(turn.turn.cow);
  body.closes = {{task.task, body.words}};
  return journal.add(body, {journal.fresh_id()});
}

/// Each once: what one turn closed the next finds closed.
Result<std::vector<TaskId>> close_by(const TurnRecorded& turn, std::span<const TaskClosed> closes,
                                     std::span<const TaskRow> open, Day day, Journal& journal) {
  std::vector<TaskId> closed;
  for (const TaskClosed& one : closes) {
    const auto is_it = [&](const TaskRow& task) { return task.open && task.task == one.task; };
    const auto task = std::find_if(open.begin(), open.end(), is_it);
    if (task == open.end()) continue;
    const Outcome added = add_closing(journal, turn, *task, one.how, day);
    if (!added) return added.faults();
    closed.push_back(one.task);
  }
  return closed;
}

}  // namespace

Outcome close_by_the_other(Store& store, HerdId herd, const TwoCows& cows, Journal& journal) {
  HerdLog log(store, herd);
  auto waiting = log.past_of(cows.waits, VisitId{});
  if (!waiting) return waiting.faults();
  const auto called = log.past_of(cows.called, VisitId{});
  if (!called) return called.faults();
  std::vector<TaskRow> open = std::move(waiting->rows.tasks);
  for (const TurnRow& row : called->rows.turns) {
    const auto entry = store.find_entry(row.turn);
    if (!entry) return entry.faults();
    const auto turn = *entry ? body_as<TurnRecorded>(**entry) : std::nullopt;
    if (!turn) continue;
    waiting->rows.tasks.clear();
    std::copy_if(open.begin(), open.end(), std::back_inserter(waiting->rows.tasks),
                 [&](const TaskRow& task) { return task.open && task.made_on < row.day; });
    const std::vector<TaskClosed> closes = tasks_closed(turn->turn, *waiting, row.day);
    const auto closed = close_by(*turn, closes, open, row.day, journal);
    if (!closed) return closed.faults();
    for (TaskRow& task : open) {
      const auto at = std::find(closed->begin(), closed->end(), task.task);
      task.open = task.open && at == closed->end();
    }
  }
  return Done{};
}

}  // namespace evenclaw
