#include "core/log/task_history.hpp"

#include <algorithm>
#include <map>
#include <set>
#include <string>
#include <vector>

#include "core/log/fates_in_doubt.hpp"
#include "core/log/visit_facts.hpp"
#include "core/trade/follow_up_rules.hpp"
#include "core/trade/told_both_ways.hpp"

namespace evenclaw {

namespace {

struct Closing {
  std::size_t nth;
  Day day;
  std::string how;
};

bool was_seen_after(const CowStory& story, const Told<CowLeft>& left) {
  return std::any_of(story.turns.begin(), story.turns.end(), [&](const Told<TurnRecorded>& turn) {
    return was_there(turn) && is_here_after(story, turn, left);
  });
}

class TaskBook {
 public:
  explicit TaskBook(const CowStory& story) : story_(story), doubts_(fates_in_doubt(story)) {}

  // Of tasks with one id, which only a faulty device makes, the first in the total order counts.
  template <class Body>
  void make(const Told<Body>& told, VisitId visit) {
    for (const TaskMade& made : told.body.tasks) {
      const auto known = rows_.find(made.task);
      if (known != rows_.end() && known->second.made_by < told.moment.nth) continue;
      rows_[made.task] = {row_of(made, visit, told.moment.day), told.moment.nth, told.entry};
    }
  }

  template <class Body>
  void close(const Told<Body>& told) {
    for (const TaskClosed& closed : told.body.closes) close(told, closed);
  }

  /// Told of another cow: of the tasks whose turn counted as hers then.
  template <class Body>
  void close_of_others(const Told<Body>& told) {
    for (const TaskClosed& closed : told.body.closes) {
      if (counted_as(told.body.cow, closed.task)) close(told, closed);
    }
  }

  void move(const Told<TaskMoved>& told) {
    const auto row = rows_.find(told.body.task);
    if (row == rows_.end()) return;
    TaskRow& task = row->second.row;
    task.due = told.body.due;
    task.overdue = told.body.overdue;
    task.earliest = std::min(task.earliest, task.due);
  }

  [[nodiscard]] bool counted_as(CowId cow, TaskId task) const {
    const auto made = rows_.find(task);
    return made != rows_.end() && names_subject(*made->second.entry, cow.value);
  }

  [[nodiscard]] std::vector<TaskRow> rows() const {
    std::vector<TaskRow> rows;
    for (const auto& [id, made] : rows_) {
      rows.push_back(made.row);
      const auto closing = closings_.find(id);
      if (closing == closings_.end()) {
        if (in_doubt_.count(id) > 0) rows.back().words = told_both_ways(made.row.words);
        continue;
      }
      rows.back().open = false;
      rows.back().closed_on = closing->second.day;
      rows.back().closed_how = closing->second.how;
    }
    return rows;
  }

 private:
  struct Made {
    TaskRow row;
    std::size_t made_by = 0;
    const Entry* entry = nullptr;
  };

  template <class Body>
  void close(const Told<Body>& told, const TaskClosed& closed) {
    Moment moment = told.moment;
    if (const FateInDoubt* doubt = doubt_about_closing(told.entry->envelope.id, closed.task)) {
      if (!doubt->settled) in_doubt_.insert(closed.task);
      const bool holds = doubt->settled && (doubt->settled->is_off || doubt->settled->is_made_anew);
      if (!holds) return;
      if (doubt->settled->is_off) moment = doubt->settled->moment;
    }
    const auto known = closings_.find(closed.task);
    if (known != closings_.end() && known->second.nth < moment.nth) return;
    closings_[closed.task] = {moment.nth, moment.day, closed.how};
  }

  /// The task of a wrap or block that was closed as off, and was told still on as well.
  [[nodiscard]] const FateInDoubt* doubt_about_closing(EntryId told_by, TaskId task) const {
    const auto made = rows_.find(task);
    if (made == rows_.end() || !made->second.row.foot) return nullptr;
    const TaskRow& row = made->second.row;
    for (const Fixture fixture : {Fixture::wrap, Fixture::block}) {
      if (!is_task_of(fixture, row.kind)) continue;
      return doubt_about(doubts_, told_by, fixture, *row.foot, row.claw);
    }
    return nullptr;
  }

  [[nodiscard]] TaskRow row_of(const TaskMade& made, VisitId visit, Day day) const {
    TaskRow row;
    row.herd = story_.herd;
    row.cow = story_.cow;
    row.task = made.task;
    row.visit = visit;
    row.made_on = day;
    row.kind = made.kind;
    row.foot = made.foot;
    row.claw = made.claw;
    row.owner = made.owner;
    row.earliest = made.earliest;
    row.due = made.due;
    row.overdue = made.overdue;
    row.words = made.words;
    row.rule = made.rule;
    row.rule_version = made.rule_version;
    return row;
  }

  const CowStory& story_;
  std::vector<FateInDoubt> doubts_;
  std::map<TaskId, Made> rows_;
  std::map<TaskId, Closing> closings_;
  std::set<TaskId> in_doubt_;
};

std::vector<const Told<TaskMoved>*> moved_in_order(const CowStory& story, const TaskBook& book) {
  std::vector<const Told<TaskMoved>*> moved;
  for (const auto& told : story.moved) moved.push_back(&told);
  for (const auto& told : story.of_others.moved) {
    if (book.counted_as(told.body.cow, told.body.task)) moved.push_back(&told);
  }
  std::sort(moved.begin(), moved.end(),
            [](const auto* a, const auto* b) { return a->moment < b->moment; });
  return moved;
}

}  // namespace

const Told<CowLeft>* left_for_good(const CowStory& story) {
  for (const Told<CowLeft>& left : story.left) {
    if (!was_seen_after(story, left)) return &left;
  }
  return nullptr;
}

std::vector<TaskRow> tasks_of(const CowStory& story) {
  TaskBook book(story);
  for (const auto& turn : story.turns) book.make(turn, turn.body.visit);
  for (const auto& told : story.news) book.make(told, told.body.visit.value_or(VisitId{}));
  for (const auto& turn : story.turns) book.close(turn);
  for (const auto& told : story.news) book.close(told);
  for (const auto& left : story.left) {
    if (!was_seen_after(story, left)) book.close(left);
  }
  for (const auto& turn : story.of_others.turns) book.close_of_others(turn);
  for (const auto& told : story.of_others.news) book.close_of_others(told);
  for (const Told<TaskMoved>* moved : moved_in_order(story, book)) book.move(*moved);
  return book.rows();
}

}  // namespace evenclaw
