#include "cli/due_text.hpp"

#include <algorithm>
#include <vector>

namespace evenclaw::cli {
namespace {

std::string padded(std::string text, std::size_t width) {
  if (text.size() < width) text.resize(width, ' ');
  return text;
}

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

std::string late_words(const DueTask& task) {
  if (task.days_late == 0) return "";
  return task.days_late == 1 ? " (1 day late)"
                             : " (" + std::to_string(task.days_late) + " days late)";
}

}  // namespace

std::string task_text(const DueTask& task) {
  return "by " + to_text(task.due) + "  " + padded(std::string(word_of(task.owner)), 8) +
         padded(task.cow_said, 6) + " " + task.words + late_words(task);
}

std::string due_text(const DueList& list) {
  if (list.tasks.empty()) return "Nothing is open.\n";
  const bool name_herds = several_herds(list);
  std::string out;
  for (const Section& section : sections) {
    std::string lines;
    for (const DueTask& task : list.tasks) {
      if (task.state != section.state) continue;
      lines += "  " + task_text(task) + (name_herds ? "  [" + task.herd_name + "]" : "") + "\n";
    }
    if (!lines.empty()) out += std::string(section.title) + "\n" + lines;
  }
  return out;
}

}  // namespace evenclaw::cli
