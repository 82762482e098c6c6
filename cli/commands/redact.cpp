#include "cli/answer.hpp"
#include "cli/commands.hpp"
#include "cli/records.hpp"
#include "core/api/redaction.hpp"

namespace evenclaw::cli {
namespace {

constexpr Operand operands[] = {{"ENTRY", "id of the entry, as \"saved\" printed it"}};
constexpr Option options[] = {
    {"--why", "WORDS", "why its contents are taken away"},
    {"--sure", "", "also when open tasks go with them, or closed ones come back"}};
constexpr Example examples[] = {
    {"evenclaw redact 019ab1f2-6a00-7000-8000-3f1c2d4e5a6b --why \"names a visitor\"",
     "takes the contents away for good; that it was there still shows"}};
constexpr JsonAnswer answers[] = {{"", JsonForm::document, field_docs<Redacted>}};

std::string said(const TaskChanged& task) {
  return task.cow_said + " " + task.words + " (" + std::string(word_of(task.owner)) + ", by " +
         to_text(task.due) + ")";
}

Exit run(const Invocation& invocation) {
  const auto id = uuid_from_text(invocation.operands.front());
  if (!id) {
    return tell_faults({{"usage", "that is no entry id", invocation.operands.front(), 0, 0,
                         "Give the id that stands after \"saved\"."}},
                       invocation);
  }
  auto records = Records::open(invocation, Opening::existing);
  if (!records) return tell_faults(records.faults(), invocation);
  const auto redacted = redact_entry((*records)->ports(), EntryId{*id}, invocation.value("--why"),
                                     invocation.has("--sure"));
  if (!redacted) return tell_faults(redacted.faults(), invocation);
  std::string done = "recorded " + to_text(redacted->entry);
  for (const TaskChanged& task : redacted->tasks_lost) done += "\nno longer due: " + said(task);
  for (const TaskChanged& task : redacted->tasks_back) done += "\nopen again: " + said(task);
  for (const EntryId correction : redacted->still_told_by) {
    done += "\nits correction still tells what was said: evenclaw redact " + to_text(correction);
  }
  tell_done(invocation, done, *redacted);
  return Exit::fine;
}

}  // namespace

extern const Command redact_command = {
    "redact", "take the contents of an entry away", operands, options, examples, run, answers};

}  // namespace evenclaw::cli
