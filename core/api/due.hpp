// What is due: open tasks seen from a given day.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/api/careful.hpp"
#include "core/api/ports.hpp"
#include "core/base/date.hpp"
#include "core/base/enum_words.hpp"
#include "core/base/id.hpp"
#include "core/base/result.hpp"
#include "core/trade/task.hpp"

namespace evenclaw {

/// overdue: its last good day is past. due: it may be done now. coming: too early yet.
enum class DueState { overdue, due, coming };

template <>
struct EnumWords<DueState> {
  static constexpr EnumWord<DueState> table[] = {
      {DueState::overdue, "overdue"}, {DueState::due, "due"}, {DueState::coming, "coming"}};
};

struct DueTask {
  HerdId herd;
  std::string herd_name;
  CowId cow;
  std::string cow_said;  // "412", or what she looks like
  TaskId task;
  TaskKind kind = TaskKind::look_at_foot;
  std::optional<Foot> foot;
  Claw claw = Claw::none;
  Owner owner = Owner::farmer;
  std::string words;
  std::string source;  // of the rule that made it; "" of a rule as it was in an older version
  Day made_on;
  Day earliest;
  Day due;
  Day overdue;
  DueState state = DueState::coming;
  std::int32_t days_late = 0;  // since `overdue`, counting that day; 0 when not late

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("herd", &DueTask::herd, "herd");
    visit("herd_name", &DueTask::herd_name, "its name");
    visit("cow", &DueTask::cow, "cow");
    visit("cow_said", &DueTask::cow_said, "her number, or what she looks like");
    visit("task", &DueTask::task, "task");
    visit("kind", &DueTask::kind, "what is to be done");
    visit("foot", &DueTask::foot, "on which foot, if one");
    visit("claw", &DueTask::claw, "on which claw, if one");
    visit("owner", &DueTask::owner, "who does it");
    visit("words", &DueTask::words, "as told to the owner");
    visit("source", &DueTask::source, "where the rule that made it comes from, if it is as now");
    visit("made_on", &DueTask::made_on, "day it was made");
    visit("earliest", &DueTask::earliest, "not before");
    visit("due", &DueTask::due, "by this day");
    visit("overdue", &DueTask::overdue, "late from this day");
    visit("state", &DueTask::state, "overdue, due or coming");
    visit("days_late", &DueTask::days_late, "days since it became late");
  }
};

struct DueList {
  Day today;
  std::vector<DueTask> tasks;  // by herd name, what is held back first, due day, owner, cow
  std::int32_t overdue = 0;
  std::int32_t due = 0;
  std::int32_t coming = 0;
  std::vector<CarefulWith> careful;  // whether anything of theirs is due or not

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("today", &DueList::today, "the day the list is made for");
    visit("tasks", &DueList::tasks, "open tasks");
    visit("overdue", &DueList::overdue, "how many are late");
    visit("due", &DueList::due, "how many may be done now");
    visit("coming", &DueList::coming, "how many are too early");
    visit("careful", &DueList::careful, "cows to be careful with in the crush");
  }
};

/// Her milk or meat is held back on that day.
bool is_held_back(const DueTask& task);

/// Open tasks of one herd, or of all, seen from `today`, and the routine trims that are due then
/// (core/trade/routine_trim.hpp), which nobody wrote down and a trim alone closes. Tasks of cows
/// that left are not listed. What is no plain order is told so (tasks_as_told.hpp).
Result<DueList> list_due(Store& store, std::optional<HerdId> herd, Day today);

DueState due_state(Day earliest, Day overdue, Day today);

}  // namespace evenclaw
