#include "core/api/redaction.hpp"

#include <map>
#include <set>
#include <span>
#include <utility>

#include "core/api/cow_names.hpp"
#include "core/api/herd_log.hpp"
#include "core/api/journal.hpp"
#include "core/base/text.hpp"
#include "core/log/bodies.hpp"
#include "core/trade/cow_rows.hpp"
#include "core/trade/task_rows.hpp"

namespace evenclaw {

namespace {

Fault wrongly_asked(std::string message) {
  return {.slug = "usage", .message = std::move(message)};
}

/// What stands otherwise once the entries are written.
struct Changed {
  std::vector<TaskChanged> lost;
  std::vector<TaskChanged> back;
};

std::set<TaskId> open_in(const Rows& rows) {
  std::set<TaskId> open;
  for (const TaskRow& task : rows.tasks) {
    if (task.open) open.insert(task.task);
  }
  return open;
}

/// The tasks that are open in the one and not in the other, each once.
void add_open_only_in(const Rows& one, const Rows& other, std::set<TaskId>& listed,
                      std::vector<TaskChanged>& changed) {
  const std::set<TaskId> open_there = open_in(other);
  for (const TaskRow& task : one.tasks) {
    const bool differs = task.open && open_there.count(task.task) == 0;
    if (!differs || !listed.insert(task.task).second) continue;
    const std::string name = one.cows.empty() ? std::string() : recorded_as(one.cows.front());
    changed.push_back({name, task.owner, task.words, task.due});
  }
}

Result<Changed> changed_by(std::span<const Entry> unwritten, Store& store, HerdId herd) {
  HerdLog before(store, herd);
  HerdLog after(store, herd);
  after.also(unwritten);
  const auto touched = after.touched_by(unwritten);
  if (!touched) return touched.faults();
  const auto groups_now = before.groups();
  if (!groups_now) return groups_now.faults();
  const auto groups_then = after.groups();
  if (!groups_then) return groups_then.faults();
  Changed changed;
  std::set<TaskId> lost;
  std::set<TaskId> back;
  for (const CowId cow : touched->cows) {
    const auto now = before.rows_of_cows(groups_now->group_of(cow));
    if (!now) return now.faults();
    const auto then = after.rows_of_cows(groups_then->group_of(cow));
    if (!then) return then.faults();
    add_open_only_in(*now, *then, lost, changed.lost);
    add_open_only_in(*then, *now, back, changed.back);
  }
  return changed;
}

/// What corrects that entry, directly or in a chain, is corrected by nothing and has its body. A
/// correction repeats what was said.
Result<std::vector<EntryId>> corrections_of(Store& store, const Entry& target) {
  std::map<EntryId, std::vector<std::pair<EntryId, bool>>> correcting;  // with: has a body
  const Outcome read = store.read_entries(
      {target.envelope.scope, std::nullopt, {target.envelope.kind}}, [&](const Entry& entry) {
        const Envelope& envelope = entry.envelope;
        if (envelope.supersedes) {
          correcting[*envelope.supersedes].emplace_back(envelope.id, entry.body.has_value());
        }
        return true;
      });
  if (!read) return read.faults();
  std::vector<EntryId> last;
  std::set<EntryId> passed = {target.envelope.id};
  std::vector<EntryId> waiting = {target.envelope.id};
  while (!waiting.empty()) {
    const EntryId at = waiting.back();
    waiting.pop_back();
    const auto next = correcting.find(at);
    if (next == correcting.end()) continue;
    for (const auto& [id, has_body] : next->second) {
      if (!passed.insert(id).second) continue;
      waiting.push_back(id);
      if (has_body && correcting.count(id) == 0) last.push_back(id);
    }
  }
  return last;
}

std::string listed(const std::vector<TaskChanged>& changed) {
  std::string tasks;
  for (const TaskChanged& task : changed) {
    tasks += (tasks.empty() ? "" : "; ") + task.cow_said + ": " + task.words + " (" +
             std::string(word_of(task.owner)) + ", by " + to_text(task.due) + ")";
  }
  return tasks;
}

Fault tasks_would_change(const Changed& changed) {
  Fault fault;
  fault.slug = "answer-needed";
  if (!changed.lost.empty()) {
    fault.message =
        "Open tasks go with it, and nobody will be reminded of them: " + listed(changed.lost) + ".";
    fault.remedy = "Tell whoever has to do them, then say that you are sure.";
  }
  if (!changed.back.empty()) {
    fault.message += (fault.message.empty() ? "" : " ") +
                     ("What it closed is open again: " + listed(changed.back) + ".");
    if (fault.remedy.empty()) {
      fault.remedy = "Say that you are sure, then close what was really done.";
    }
  }
  return fault;
}

Outcome check_target(const std::optional<Entry>& found, EntryId target) {
  if (!found) return wrongly_asked("There is no entry " + to_text(target) + ".");
  if (found->envelope.kind == Redact::kind) {
    return wrongly_asked("That entry took the contents of another away; what it says stays.");
  }
  if (found->body) return Done{};
  return Fault{.slug = "nothing-to-do",
               .message = "The contents of that entry were taken away before.",
               .token = to_text(target)};
}

}  // namespace

Result<Redacted> redact_entry(const Ports& ports, EntryId target, std::string_view words,
                              bool sure) {
  if (trimmed(words).empty()) return wrongly_asked("Say why the record is to be taken away.");
  const auto found = ports.store.find_entry(target);
  if (!found) return found.faults();
  const Outcome fits = check_target(*found, target);
  if (!fits) return fits.faults();
  const Envelope& envelope = (*found)->envelope;
  auto journal = Journal::open(ports, envelope.scope);
  if (!journal) return journal.faults();
  Redacted redacted;
  redacted.entry = journal->fresh_id();
  const Redact body{target, std::string(trimmed(words))};
  const Outcome added = journal->add(body, {redacted.entry, envelope.subjects});
  if (!added) return added.faults();
  auto changed = changed_by(journal->unwritten(), ports.store, HerdId{envelope.scope});
  if (!changed) return changed.faults();
  const bool changes = !changed->lost.empty() || !changed->back.empty();
  if (changes && !sure) return tasks_would_change(*changed);
  redacted.tasks_lost = std::move(changed->lost);
  redacted.tasks_back = std::move(changed->back);
  auto corrections = corrections_of(ports.store, **found);
  if (!corrections) return corrections.faults();
  redacted.still_told_by = *std::move(corrections);
  const auto kept = journal->write();
  if (!kept) return kept.faults();
  return redacted;
}

}  // namespace evenclaw
