#include "cli/answer.hpp"
#include "cli/commands.hpp"
#include "cli/records.hpp"
#include "core/api/said_day.hpp"
#include "core/api/visits.hpp"

namespace evenclaw::cli {
namespace {

constexpr Operand operands[] = {{"DAY", "the day on which the visit was, as 2026-11-24"}};
constexpr Option options[] = {
    {"--herd", "HERD", "the herd, when there are several"},
    {"--day", "DAY", "the day it stands under; else the open visit, or the latest"},
    {"--sure", "", "a day long ago is meant so"}};
constexpr Example examples[] = {
    {"evenclaw right-day 2026-11-24", "the open visit was begun under the wrong day"},
    {"evenclaw right-day 2026-11-24 --herd home --day 2025-11-24", "a slip of the year"}};
constexpr JsonAnswer answers[] = {{"", JsonForm::document, field_docs<DayCorrected>}};

Result<Day> day_said(const std::string& text) {
  const auto day = day_from_text(text);
  if (day) return *day;
  return Fault{.slug = "date-unreadable",
               .message = '"' + text + "\" is not a date",
               .token = text,
               .remedy = "Write it as year-month-day, such as 2026-11-24."};
}

std::string told_and_right(const std::vector<TaskRedated>& tasks, Day today) {
  std::string lines;
  for (const TaskRedated& task : tasks) {
    lines += "\n  " + task.cow_said + " " + task.words + " (" + std::string(word_of(task.owner)) +
             "): " + said_day(task.told, today) + " -> " + said_day(task.right, today);
  }
  return lines;
}

std::string done_words(const Visit& before, const DayCorrected& corrected, Day today) {
  const Visit& visit = corrected.visit;
  const std::string done = "The visit to " + visit.herd_name + " stands under " +
                           said_day(visit.day, today) + " now, no longer under " +
                           said_day(before.day, today) + ".";
  const std::vector<TaskRedated>& tasks = corrected.tasks;
  if (tasks.empty()) return done + "\nNo open task changes its day: evenclaw due";
  if (corrected.tasks_moved) {
    return done + "\nThe tasks it made moved with it:" + told_and_right(tasks, today);
  }
  const TaskRedated& first = tasks.front();
  return done +
         "\nIt had been ended: its tasks keep the days the farmer was told. Counted from the right "
         "day they would be:" +
         told_and_right(tasks, today) + "\nTo move one, and tell the farmer: evenclaw task \"" +
         first.cow_said + "\" \"" + first.words + "\" --move " + to_text(first.right) +
         " --why \"visit was on another day\"";
}

Exit run(const Invocation& invocation) {
  const auto day = day_said(invocation.operands.front());
  if (!day) return tell_faults(day.faults(), invocation);
  auto records = Records::open(invocation, Opening::existing);
  if (!records) return tell_faults(records.faults(), invocation);
  const auto before = (*records)->visit_meant(invocation, VisitState::any);
  if (!before) return tell_faults(before.faults(), invocation);
  const auto corrected = correct_visit_day((*records)->ports(), *before,
                                           {*day, invocation.has("--sure"), (*records)->today()});
  if (!corrected) return tell_faults(corrected.faults(), invocation);
  tell_done(invocation, done_words(*before, *corrected, (*records)->today()), *corrected);
  return Exit::fine;
}

}  // namespace

extern const Command right_day_command = {
    "right-day", "put right the day of a visit", operands, options, examples, run, answers};

}  // namespace evenclaw::cli
