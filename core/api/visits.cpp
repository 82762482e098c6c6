#include "core/api/visits.hpp"

#include <algorithm>
#include <set>
#include <utility>

#include "core/api/herds.hpp"
#include "core/api/journal.hpp"
#include "core/api/people.hpp"
#include "core/api/recording.hpp"
#include "core/log/bodies.hpp"
#include "core/trade/identity.hpp"
#include "core/trade/leaving_yard.hpp"

namespace evenclaw {

namespace {

Result<std::vector<VisitRow>> visits_of(Store& store, std::optional<HerdId> herd) {
  return select_as<VisitRow>(store, herd, {}, {"day", "ordinal"});
}

Day clock_day(const Ports& ports) {
  return day_of(ports.clock.now());
}

/// A day from paper may be months old, and a slip of the year is a year off give or take those. Our
/// judgement.
constexpr std::int32_t days_without_asking = 183;

Fault is_year_right(Day day, Day today) {
  return {
      .slug = "answer-needed",
      .message = to_text(day) + " lies more than half a year before today, " + to_text(today) + ".",
      .token = to_text(day),
      .remedy = "Check the year; or say that this day is meant."};
}

Outcome check_day(Day day, Day today) {
  if (day <= today) return Done{};
  return Fault{.slug = "date-in-future",
               .message = to_text(day) + " lies after today, " + to_text(today) + ".",
               .token = to_text(day),
               .remedy = "Check year and month, and the clock of this device."};
}

/// Who calls and who types stands in the envelope of the opening.
Result<SaidBy> said_by_of(Store& store, HerdId herd, VisitId visit) {
  SaidBy by;
  const Outcome read = store.read_entries(
      {herd.value, visit.value, {std::string(VisitOpened::kind)}}, [&](const Entry& entry) {
        by.caller = entry.envelope.caller.value_or(PersonId{});
        by.writer = entry.envelope.writer.value_or(PersonId{});
        return false;
      });
  if (!read) return read.faults();
  return by;
}

Result<Visit> with_names(const Ports& ports, const VisitRow& row) {
  Visit visit = visit_of(row);
  visit.goes_on = true;
  const auto herd = herd_of(ports.store, row.herd);
  if (herd) visit.herd_name = herd->name;
  const auto by = said_by_of(ports.store, row.herd, row.visit);
  if (!by) return by.faults();
  const auto everybody = ports.directory.everybody();
  if (!everybody) return everybody.faults();
  visit.caller = name_of(*everybody, by->caller);
  visit.writer = name_of(*everybody, by->writer);
  return visit;
}

Result<PersonId> person_or_nil(const Ports& ports, const std::string& name, bool sure) {
  if (name.empty()) return PersonId{};
  return certain_person(ports, name, sure);
}

Fault open_on_another_day(const Visit& open) {
  return {.slug = "two-visits-open",
          .message =
              "The visit to " + open.herd_name + " on " + to_text(open.day) + " was never ended.",
          .token = to_text(open.day),
          .remedy = "End it first."};
}

/// The visit to go on with, if there is one; a fault when another day's visit stands in the way.
Result<std::optional<Visit>> visit_to_go_on(const Ports& ports, const VisitWanted& wanted,
                                            const std::vector<VisitRow>& rows, Day day) {
  const VisitRow* of_the_day = nullptr;
  for (const VisitRow& row : rows) {
    if (row.day == day) of_the_day = &row;
    if (row.day == day || row.closed) continue;
    const auto open = with_names(ports, row);
    if (!open) return open.faults();
    return open_on_another_day(*open);
  }
  if (of_the_day == nullptr) return std::optional<Visit>();
  // A second visit of the day begins only when the first one was ended.
  if (wanted.second_that_day && of_the_day->closed) return std::optional<Visit>();
  auto visit = with_names(ports, *of_the_day);
  if (!visit) return visit.faults();
  return std::optional<Visit>(*std::move(visit));
}

/// One more than the ordinals given out for that day; a visit moved to another day keeps its own.
int next_ordinal(const std::vector<VisitRow>& rows, HerdId herd, Day day) {
  int ordinal = 1;
  const auto is_taken = [&](const VisitRow& row) {
    return row.visit == visit_id(herd, day, ordinal);
  };
  while (std::any_of(rows.begin(), rows.end(), is_taken)) ++ordinal;
  return ordinal;
}

Result<Visit> open_new(const Ports& ports, const VisitWanted& wanted,
                       const std::vector<VisitRow>& rows, Day day) {
  const Day today = wanted.today.value_or(clock_day(ports));
  if (!wanted.sure && day + days_without_asking < today) return is_year_right(day, today);
  const Outcome known = check_people(ports, {wanted.caller, wanted.writer}, wanted.sure);
  if (!known) return known.faults();
  const auto caller = person_or_nil(ports, wanted.caller, wanted.sure);
  if (!caller) return caller.faults();
  const auto writer = person_or_nil(ports, wanted.writer, wanted.sure);
  if (!writer) return writer.faults();
  const auto herd = herd_of(ports.store, wanted.herd);
  if (!herd) return herd.faults();
  VisitOpened body;
  body.day = day;
  body.ordinal = next_ordinal(rows, wanted.herd, day);
  body.visit = visit_id(wanted.herd, day, body.ordinal);
  body.todays_feet = wanted.todays_feet;
  body.from_paper = wanted.from_paper;
  const auto written = write_one(ports, wanted.herd.value, body, {{}, {}, {*caller, *writer}, {}});
  if (!written) return written.faults();
  Visit visit;
  visit.herd = wanted.herd;
  visit.herd_name = herd->name;
  visit.visit = body.visit;
  visit.day = day;
  visit.ordinal = body.ordinal;
  visit.todays_feet = body.todays_feet;
  visit.from_paper = body.from_paper;
  visit.caller = wanted.caller;
  visit.writer = wanted.writer;
  return visit;
}

std::string named(const Visit& visit) {
  return visit.herd_name + " on " + to_text(visit.day);
}

/// What was called beside the crush and what is typed from paper are told apart by visit.
Fault begun_otherwise(const Visit& visit) {
  return {.slug = "answer-needed",
          .message = "The visit to " + named(visit) + " was not begun from paper.",
          .token = to_text(visit.day),
          .remedy =
              "Leave that out to go on with it; or, when it was ended, start a second visit "
              "of that day."};
}

Fault day_is_taken(const Visit& visit, const VisitRow& row) {
  if (row.visit == visit.visit) {
    return {.slug = "nothing-to-do",
            .message = "The visit to " + visit.herd_name + " stands under " + to_text(row.day) +
                       " already.",
            .token = to_text(row.day),
            .remedy = "Say the day on which it was."};
  }
  return {.slug = "visit-day-taken",
          .message = visit.herd_name + " has another visit on " + to_text(row.day) + ".",
          .token = to_text(row.day)};
}

Result<Visit> as_it_is_now(const Ports& ports, const Visit& visit) {
  return find_visit(ports, visit.herd, visit.day, visit.ordinal);
}

}  // namespace

Visit visit_of(const VisitRow& row) {
  Visit visit;
  visit.herd = row.herd;
  visit.visit = row.visit;
  visit.day = row.day;
  visit.ordinal = row.ordinal;
  visit.todays_feet = row.todays_feet;
  visit.from_paper = row.from_paper;
  visit.closed = row.closed;
  return visit;
}

Outcome check_first_visit(const Ports& ports, const VisitWanted& wanted) {
  const Day today = wanted.today.value_or(clock_day(ports));
  const Day day = wanted.day.value_or(today);
  const Outcome fit = check_day(day, today);
  if (!fit) return fit;
  if (!wanted.sure && day + days_without_asking < today) return is_year_right(day, today);
  return check_people(ports, {wanted.caller, wanted.writer}, wanted.sure);
}

Result<Visit> start_visit(const Ports& ports, const VisitWanted& wanted) {
  const Day today = wanted.today.value_or(clock_day(ports));
  const Day day = wanted.day.value_or(today);
  const Outcome fit = check_day(day, today);
  if (!fit) return fit.faults();
  const auto rows = visits_of(ports.store, wanted.herd);
  if (!rows) return rows.faults();
  auto known = visit_to_go_on(ports, wanted, *rows, day);
  if (!known) return known.faults();
  if (*known && wanted.from_paper && !(*known)->from_paper) return begun_otherwise(**known);
  if (*known) return **std::move(known);
  return open_new(ports, wanted, *rows, day);
}

Result<std::vector<Visit>> open_visits(const Ports& ports, std::optional<HerdId> herd) {
  const auto rows = visits_of(ports.store, herd);
  if (!rows) return rows.faults();
  std::vector<Visit> open;
  for (const VisitRow& row : *rows) {
    if (row.closed) continue;
    auto visit = with_names(ports, row);
    if (!visit) return visit.faults();
    open.push_back(*std::move(visit));
  }
  return open;
}

Result<Visit> the_open_visit(const Ports& ports, std::optional<HerdId> herd) {
  auto open = open_visits(ports, herd);
  if (!open) return open.faults();
  if (open->size() == 1) return std::move(open->front());
  if (open->empty()) {
    return Fault{
        .slug = "no-visit-open", .message = "No visit is open.", .remedy = "Start a visit first."};
  }
  std::string names;
  for (const Visit& visit : *open) names += (names.empty() ? "" : ", ") + named(visit);
  return Fault{.slug = "two-visits-open",
               .message = "More than one visit is open: " + names + ".",
               .remedy = "Name the herd, or end the visit that is over."};
}

Result<Visit> find_visit(const Ports& ports, HerdId herd, std::optional<Day> day,
                         std::optional<int> ordinal) {
  const auto rows = visits_of(ports.store, herd);
  if (!rows) return rows.faults();
  const VisitRow* found = nullptr;
  for (const VisitRow& row : *rows) {
    if ((!day || row.day == *day) && (!ordinal || row.ordinal == *ordinal)) found = &row;
  }
  if (found != nullptr) return with_names(ports, *found);
  Fault fault{.slug = "visit-not-found", .message = "There is no such visit of that herd."};
  if (day) fault.message = "There is no visit of that herd on " + to_text(*day) + ".";
  if (day) fault.token = to_text(*day);
  if (!rows->empty()) fault.remedy = "The last one was on " + to_text(rows->back().day) + ".";
  return fault;
}

Result<DayCorrected> correct_visit_day(const Ports& ports, const Visit& visit,
                                       const DayMeant& right) {
  const Day day = right.day;
  const Day today = right.today.value_or(clock_day(ports));
  const Outcome fit = check_day(day, today);
  if (!fit) return fit.faults();
  const auto rows = visits_of(ports.store, visit.herd);
  if (!rows) return rows.faults();
  for (const VisitRow& row : *rows) {
    if (row.day == day) return day_is_taken(visit, row);
  }
  if (!right.sure && day + days_without_asking < today) return is_year_right(day, today);
  auto journal = Journal::open(ports, visit.herd.value);
  if (!journal) return journal.faults();
  VisitCorrected body;
  body.visit = visit.visit;
  body.day = day;
  const Outcome added = journal->add(body, {journal->fresh_id()});
  if (!added) return added.faults();
  DayCorrected corrected;
  corrected.tasks_moved = !visit.closed;
  auto tasks = redate_tasks(ports, {visit.herd, visit.visit, visit.day, day},
                            visit.closed ? Redating::looks : Redating::corrects, *journal);
  if (!tasks) return tasks.faults();
  corrected.tasks = *std::move(tasks);
  const auto written = journal->write();
  if (!written) return written.faults();
  auto now = find_visit(ports, visit.herd, day);
  if (!now) return now.faults();
  corrected.visit = *std::move(now);
  return corrected;
}

namespace {

/// Who stands in the crush is in the draft the store keeps; without one there is nobody.
Result<std::vector<ReplyItem>> let_out_last(const Ports& ports, const Visit& visit,
                                            const Language& language) {
  const auto draft = ports.store.draft();
  if (!draft) return draft.faults();
  if (draft->empty()) return std::vector<ReplyItem>();
  auto recording = Recording::open(ports, visit, language);
  if (!recording) return recording.faults();
  auto reply = recording->end_of_visit();
  if (!reply) return reply.faults();
  return std::move(reply->items);
}

/// With names, which the log never holds.
Result<VisitEnded> shown(const Ports& ports, VisitEnded ended) {
  auto open = with_names_shown(std::move(ended.open), ports.directory);
  if (!open) return open.faults();
  ended.open = *std::move(open);
  return ended;
}

}  // namespace

Result<VisitEnded> end_visit(const Ports& ports, const Visit& visit, const Language& language) {
  auto last_turn = let_out_last(ports, visit, language);
  if (!last_turn) return last_turn.faults();
  VisitEnded ended;
  ended.last_turn = *std::move(last_turn);
  const auto now = as_it_is_now(ports, visit);
  if (!now) return now.faults();
  ended.visit = *now;
  ended.ended_before = now->closed;
  const auto state = closing_state(ports.store, *now);
  if (!state) return state.faults();
  ended.open = state->open;
  ended.cows = state->cows;
  if (ended.ended_before && !state->changed_since_closing) return shown(ports, std::move(ended));
  VisitClosed body;
  body.visit = visit.visit;
  for (const OpenPoint& point : ended.open) body.left_open.push_back(point.words);
  const auto by = said_by_of(ports.store, visit.herd, visit.visit);
  if (!by) return by.faults();
  const auto written = write_one(ports, visit.herd.value, body, {{}, {}, *by, {}});
  if (!written) return written.faults();
  ended.visit.closed = true;
  if (ended.ended_before || ended.visit.from_paper) return shown(ports, std::move(ended));
  for (const YardTask& task : before_leaving_the_yard()) {
    ended.before_leaving.emplace_back(task.words);
  }
  return shown(ports, std::move(ended));
}

}  // namespace evenclaw
