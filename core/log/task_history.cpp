#include "core/log/task_history.hpp"

#include <algorithm>
#include <map>
#include <string>

namespace evenclaw {

namespace {

struct Closing {
  std::size_t nth;
  Day day;
  std::string how;
};

bool was_seen_after(const CowStory& story, const Moment& moment) {
  return std::any_of(story.turns.begin(), story.turns.end(), [&](const Told<TurnRecorded>& turn) {
    return moment < turn.moment && was_there(turn);
  });
}

class TaskBook {
 public:
  explicit TaskBook(const CowStory& story) : story_(story) {}

  // Of tasks with one id, which only a faulty device makes, the first in the total order counts.
  template <class Body>
  void make(const Told<Body>& told, VisitId visit) {
    for (const TaskMade& made : told.body.tasks) {
      const auto known = rows_.find(made.task);
      if (known != rows_.end() && known->second.made_by < told.moment.nth) continue;
      rows_[made.task] = {row_of(made, visit, told.moment.day), told.moment.nth};
    }
  }

  template <class Body>
  void close(const Told<Body>& told) {
    for (const TaskClosed& closed : told.body.closes) {
      const auto known = closings_.find(closed.task);
      if (known != closings_.end() && known->second.nth < told.moment.nth) continue;
      closings_[closed.task] = {told.moment.nth, told.moment.day, closed.how};
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

  [[nodiscard]] std::vector<TaskRow> rows() const {
    std::vector<TaskRow> rows;
    for (const auto& [id, made] : rows_) {
      rows.push_back(made.row);
      const auto closing = closings_.find(id);
      if (closing == closings_.end()) continue;
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
  };

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
  std::map<TaskId, Made> rows_;
  std::map<TaskId, Closing> closings_;
};

}  // namespace

const Told<CowLeft>* left_for_good(const CowStory& story) {
  for (const Told<CowLeft>& left : story.left) {
    if (!was_seen_after(story, left.moment)) return &left;
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
    if (!was_seen_after(story, left.moment)) book.close(left);
  }
  for (const auto& moved : story.moved) book.move(moved);
  return book.rows();
}

}  // namespace evenclaw
