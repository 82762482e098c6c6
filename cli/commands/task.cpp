#include "cli/answer.hpp"
#include "cli/commands.hpp"
#include "cli/due_text.hpp"
#include "cli/records.hpp"
#include "core/api/cow_names.hpp"
#include "core/api/tasks.hpp"

namespace evenclaw::cli {
namespace {

constexpr Operand operands[] = {
    {"COW", "her number"},
    {"WHICH", "its number in the list this command prints, or its words", false}};
constexpr Option options[] = {{"--herd", "HERD", "the herd, when there are several"},
                              {"--done", "WORDS", "close it, in the words of who did it"},
                              {"--move", "DAY", "do it on that day instead"},
                              {"--why", "WORDS", "why it is moved"}};
constexpr Example examples[] = {
    {"evenclaw task 412", "her open tasks, numbered"},
    {"evenclaw task 412 1 --done \"wrap off, looks dry\"", "closes the first"},
    {"evenclaw task 412 \"block check\" --move 2026-12-03 --why \"vet comes Thursday\"",
     "moves the one that begins so"}};
constexpr JsonAnswer answers[] = {
    {"without --done and --move", JsonForm::list, field_docs<DueTask>},
    {"with them", JsonForm::document, field_docs<EntryAnswer>}};

Exit usage(const Invocation& invocation, std::string message) {
  return tell_faults({{"usage", std::move(message), "", 0, 0, "See: evenclaw help task"}},
                     invocation);
}

Exit list(const std::vector<DueTask>& tasks, Day today, const Invocation& invocation) {
  if (invocation.json) {
    print_json(tasks);
    return Exit::fine;
  }
  for (std::size_t i = 0; i < tasks.size(); ++i) {
    std::cout << "  " << i + 1 << "  " << task_of_her(tasks[i], today) << '\n';
  }
  if (tasks.empty()) std::cout << "Nothing of hers is open.\n";
  return Exit::fine;
}

const DueTask* chosen(const std::vector<DueTask>& tasks, const Invocation& invocation) {
  if (invocation.operands.size() < 2) return tasks.size() == 1 ? &tasks.front() : nullptr;
  const std::string& which = invocation.operands[1];
  const DueTask* found = nullptr;
  for (std::size_t i = 0; i < tasks.size(); ++i) {
    if (which == std::to_string(i + 1)) return &tasks[i];
    if (which.empty() || tasks[i].words.rfind(which, 0) != 0) continue;
    if (found != nullptr) return nullptr;
    found = &tasks[i];
  }
  return found;
}

Result<EntryId> settled(Records& records, const DueTask& task, const Invocation& invocation) {
  if (invocation.has("--done")) {
    return close_task(records.ports(), task.herd, task.task, invocation.value("--done"),
                      records.today());
  }
  auto day = day_option(invocation, "--move");
  if (!day) return day.faults();
  return move_task(records.ports(), task.herd, task.task, **day, invocation.value("--why"));
}

Exit run(const Invocation& invocation) {
  const bool writes = invocation.has("--done") || invocation.has("--move");
  if (invocation.has("--done") && invocation.has("--move")) {
    return usage(invocation, "a task is either done or moved");
  }
  auto records = Records::open(invocation, writes ? Opening::existing : Opening::look);
  if (!records) return tell_faults(records.faults(), invocation);
  auto herd = (*records)->herd_meant(invocation);
  if (!herd) return tell_faults(herd.faults(), invocation);
  const std::string named = recorded_as(invocation.operands.front(), (*records)->language());
  auto tasks = open_tasks_of((*records)->store(), herd->herd, named, (*records)->today());
  if (!tasks) return tell_faults(tasks.faults(), invocation);
  if (!writes) return list(*tasks, (*records)->today(), invocation);
  const DueTask* task = chosen(*tasks, invocation);
  if (task == nullptr)
    return usage(invocation, "which of her tasks? Name its number in the list, or its words");
  auto entry = settled(**records, *task, invocation);
  if (!entry) return tell_faults(entry.faults(), invocation);
  tell_done(invocation,
            (invocation.has("--done") ? "closed " : "moved ") + task->cow_said + ": " + task->words,
            EntryAnswer{*entry});
  return Exit::fine;
}

}  // namespace

extern const Command task_command = {
    "task", "close or move a task of a cow", operands, options, examples, run, answers};

}  // namespace evenclaw::cli
