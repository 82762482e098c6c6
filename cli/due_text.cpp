#include "cli/due_text.hpp"

#include <algorithm>
#include <string>
#include <vector>

#include "cli/columns.hpp"
#include "core/api/said_day.hpp"

namespace evenclaw::cli {
namespace {

struct Section {
  DueState state;
  std::string_view title;
};

constexpr Section sections[] = {
    {DueState::overdue, "Late"}, {DueState::due, "May be done now"}, {DueState::coming, "Coming"}};

bool several_herds(const DueList& list) {
  return std::any_of(list.tasks.begin(), list.tasks.end(),
                     [&](const DueTask& task) { return task.herd != list.tasks.front().herd; });
}

std::string by_whom(const DueTask& task, Day today) {
  constexpr std::size_t day_width = 13;
  constexpr std::size_t owner_width = 9;
  return padded("by " + said_day(task.due, today), day_width) + "  " +
         padded(word_of(task.owner), owner_width);
}

std::string what(const DueTask& task, Day today) {
  if (task.state != DueState::overdue) return task.words;
  const bool is_over = task.kind == TaskKind::withdrawal_end;
  return task.words + (is_over ? " (over since " : " (late since ") +
         said_day(task.overdue, today) + ")";
}

template <class F>
std::string section_text(const DueList& list, std::string_view title, F belongs) {
  const bool name_herds = several_herds(list);
  std::string lines;
  for (const DueTask& task : list.tasks) {
    if (!belongs(task)) continue;
    lines += "  " + task_text(task, list.today) + (name_herds ? "  [" + task.herd_name + "]" : "") +
             "\n";
  }
  return lines.empty() ? lines : std::string(title) + "\n" + lines;
}

/// Before anything else: who goes to fetch them reads it first.
std::string careful_text(const DueList& list) {
  constexpr std::size_t cow_width = 6;
  const bool name_herds =
      several_herds(list) ||
      std::any_of(list.careful.begin(), list.careful.end(), [&](const CarefulWith& cow) {
        return cow.herd != list.careful.front().herd ||
               (!list.tasks.empty() && cow.herd != list.tasks.front().herd);
      });
  std::string lines;
  for (const CarefulWith& cow : list.careful) {
    lines += "  " + padded(cow.cow_said, cow_width) + " " + cow.words + " (" +
             said_day(cow.last_said, list.today) + ")" +
             (name_herds ? "  [" + cow.herd_name + "]" : "") + "\n";
  }
  return lines.empty() ? lines : "Careful in the crush\n" + lines;
}

/// Each source once; what was called or told needs none.
std::string sources_of_routine_trims(const DueList& list) {
  std::vector<std::string> sources;
  for (const DueTask& task : list.tasks) {
    if (task.kind != TaskKind::routine_trim) continue;
    // "routine trim due: before drying off"
    const std::string when = task.words.substr(task.words.find(": ") + 2);
    const std::string line = "  " + when + ": " + task.source + "\n";
    if (std::find(sources.begin(), sources.end(), line) == sources.end()) sources.push_back(line);
  }
  return sources.empty() ? std::string() : "When routine trims are due\n" + joined(sources, "");
}

}  // namespace

std::string task_text(const DueTask& task, Day today) {
  constexpr std::size_t cow_width = 6;
  return by_whom(task, today) + padded(task.cow_said, cow_width) + " " + what(task, today);
}

std::string task_of_her(const DueTask& task, Day today) {
  return by_whom(task, today) + what(task, today);
}

std::string due_text(const DueList& list) {
  const std::string careful = careful_text(list);
  if (list.tasks.empty()) return careful + "Nothing is open.\n";
  std::string out = careful + section_text(list, "Milk and meat held back", is_held_back);
  for (const Section& section : sections) {
    out += section_text(list, section.title, [&](const DueTask& task) {
      return task.state == section.state && !is_held_back(task);
    });
  }
  return out + sources_of_routine_trims(list);
}

}  // namespace evenclaw::cli
