#include "core/api/redate.hpp"

#include <algorithm>
#include <map>
#include <optional>
#include <utility>

#include "core/api/cow_names.hpp"
#include "core/api/herd_log.hpp"
#include "core/log/body.hpp"
#include "core/log/standing.hpp"
#include "core/trade/cow_rows.hpp"
#include "core/trade/follow_up.hpp"
#include "core/trade/medicine_use.hpp"
#include "core/trade/task_rows.hpp"

namespace evenclaw {

namespace {

/// The turns and news of a visit, with what corrects them.
class VisitLog {
 public:
  static Result<VisitLog> read(Store& store, const RightDay& day) {
    VisitLog log;
    EntrySelection selection;
    selection.scope = day.herd.value;
    selection.subject = day.visit.value;
    selection.kinds = {std::string(TurnRecorded::kind), std::string(TaskClosedBody::kind),
                       std::string(Redact::kind)};
    selection.versions = Versions::every;
    const Outcome read = store.read_entries(selection, [&](const Entry& entry) {
      log.entries_.push_back(entry);
      return true;
    });
    if (!read) return read.faults();
    return log;
  }

  /// That entry and all it corrects, the latest first.
  [[nodiscard]] std::vector<EntryId> line_of(const Entry& entry) const {
    std::vector<EntryId> line = {entry.envelope.id};
    std::optional<EntryId> next = entry.envelope.supersedes;
    while (next && std::find(line.begin(), line.end(), *next) == line.end()) {
      line.push_back(*next);
      next = corrected_by(*next);
    }
    return line;
  }

  [[nodiscard]] std::vector<const Entry*> standing() const {
    return standing_among(entries_).entries;
  }

 private:
  [[nodiscard]] std::optional<EntryId> corrected_by(EntryId id) const {
    const auto at = std::find_if(entries_.begin(), entries_.end(),
                                 [&](const Entry& entry) { return entry.envelope.id == id; });
    return at == entries_.end() ? std::nullopt : at->envelope.supersedes;
  }

  std::vector<Entry> entries_;
};

/// What a rule of today makes of it; a task no rule makes any more keeps its distance to the visit.
TaskMade redated(TaskMade task, const std::vector<TaskMade>& anew, const RightDay& day) {
  const auto same = std::find_if(anew.begin(), anew.end(),
                                 [&](const TaskMade& made) { return made.task == task.task; });
  const std::int32_t days = day.is - day.was;
  task.earliest = same == anew.end() ? task.earliest + days : same->earliest;
  // The end of a withdrawal stands in its words as well.
  if (same != anew.end() && task.kind == TaskKind::withdrawal_end) task.words = same->words;
  task.due = same == anew.end() ? task.due + days : same->due;
  task.overdue = same == anew.end() ? task.overdue + days : same->overdue;
  return task;
}

std::vector<TaskMade> redated(std::vector<TaskMade> tasks, const std::vector<TaskMade>& anew,
                              const RightDay& day) {
  for (TaskMade& task : tasks) task = redated(std::move(task), anew, day);
  return tasks;
}

class Redater {
 public:
  Redater(const Ports& ports, const RightDay& day, const VisitLog& log)
      : ports_(ports), day_(day), log_(log) {}

  Outcome redate(const Entry& entry, Journal* journal) {
    if (const auto turn = body_as<TurnRecorded>(entry)) return redate_turn(entry, *turn, journal);
    if (const auto news = body_as<TaskClosedBody>(entry)) return redate_news(entry, *news, journal);
    return Done{};
  }

  /// By id, as made before and now.
  [[nodiscard]] const std::map<TaskId, std::pair<TaskMade, TaskMade>>& tasks() const {
    return tasks_;
  }

 private:
  Outcome redate_turn(const Entry& entry, const TurnRecorded& turn, Journal* journal) {
    const std::vector<EntryId> line = log_.line_of(entry);
    HerdLog herd_log(ports_.store, day_.herd);
    for (const EntryId id : line) herd_log.without(id);
    const auto past = herd_log.past_of(turn.cow, day_.visit);
    if (!past) return past.faults();
    TurnRecorded right = turn;
    right.turn = with_ends_counted_from(turn.turn, day_.is);
    const std::vector<TaskMade> anew =
        with_ids_kept(tasks_made(right.turn, *past, day_.is, line.back()), turn.tasks);
    right.tasks = redated(turn.tasks, anew, day_);
    for (TaskClosed& closed : tasks_closed(turn.turn, *past, day_.is)) {
      const bool known = std::any_of(turn.closes.begin(), turn.closes.end(),
                                     [&](const TaskClosed& c) { return c.task == closed.task; });
      if (!known) right.closes.push_back(std::move(closed));
    }
    note(turn.tasks, right.tasks);
    const bool is_alike = right.tasks == turn.tasks && right.closes == turn.closes;
    return is_alike || journal == nullptr ? Outcome(Done{}) : correct(entry, right, *journal);
  }

  Outcome redate_news(const Entry& entry, const TaskClosedBody& news, Journal* journal) {
    if (news.tasks.empty() || news.visit != day_.visit) return Done{};
    TaskClosedBody right = news;
    right.day = day_.is;
    right.tasks = redated(news.tasks, {}, day_);
    note(news.tasks, right.tasks);
    return journal == nullptr ? Outcome(Done{}) : correct(entry, right, *journal);
  }

  void note(const std::vector<TaskMade>& before, const std::vector<TaskMade>& now) {
    for (std::size_t i = 0; i < before.size(); ++i) {
      tasks_.insert_or_assign(before[i].task, std::pair(before[i], now[i]));
    }
  }

  /// Who judged and who typed stays; all that the entry touched is touched again.
  template <class Body>
  static Outcome correct(const Entry& entry, const Body& right, Journal& journal) {
    const Envelope& envelope = entry.envelope;
    const SaidBy by{envelope.caller.value_or(PersonId{}), envelope.writer.value_or(PersonId{})};
    return journal.add(right, {journal.fresh_id(), envelope.subjects, by, envelope.id});
  }

  const Ports& ports_;
  const RightDay& day_;
  const VisitLog& log_;
  std::map<TaskId, std::pair<TaskMade, TaskMade>> tasks_;
};

/// Those that are open still and that nobody moved to a day of his own.
Result<std::vector<TaskRedated>> open_ones(Store& store, HerdId herd, const Redater& redater) {
  const auto rows = select_as<TaskRow>(
      store, herd, {{"open", Compare::equal, Cell(std::int64_t{1})}}, {"due", "kind", "foot"});
  if (!rows) return rows.faults();
  const auto cows = select_as<CowRow>(store, herd);
  if (!cows) return cows.faults();
  std::vector<TaskRedated> open;
  for (const TaskRow& row : *rows) {
    const auto made = redater.tasks().find(row.task);
    if (made == redater.tasks().end()) continue;
    const auto& [before, now] = made->second;
    if (row.due != before.due || before.due == now.due) continue;
    const auto cow = std::find_if(cows->begin(), cows->end(),
                                  [&](const CowRow& known) { return known.cow == row.cow; });
    const std::string said = cow == cows->end() ? std::string() : recorded_as(*cow);
    open.push_back({said, row.owner, row.words, before.due, now.due});
  }
  return open;
}

}  // namespace

Result<std::vector<TaskRedated>> redate_tasks(const Ports& ports, const RightDay& day,
                                              Redating redating, Journal& journal) {
  const auto log = VisitLog::read(ports.store, day);
  if (!log) return log.faults();
  Redater redater(ports, day, *log);
  for (const Entry* entry : log->standing()) {
    const Outcome done =
        redater.redate(*entry, redating == Redating::corrects ? &journal : nullptr);
    if (!done) return done.faults();
  }
  return open_ones(ports.store, day.herd, redater);
}

}  // namespace evenclaw
