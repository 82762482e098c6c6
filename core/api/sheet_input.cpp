#include "core/api/sheet_input.hpp"

#include <algorithm>
#include <iterator>
#include <map>
#include <set>
#include <utility>

#include "core/api/as_it_stood.hpp"
#include "core/api/below_floor.hpp"
#include "core/api/filled_rows.hpp"
#include "core/api/medicine_told.hpp"
#include "core/api/news_seen.hpp"
#include "core/api/people.hpp"
#include "core/api/products.hpp"
#include "core/api/removed_records.hpp"
#include "core/api/stops_before.hpp"
#include "core/api/vet_asked_earlier.hpp"
#include "core/api/whom_to_ring.hpp"
#include "core/log/body.hpp"
#include "core/sheets/last_time.hpp"
#include "core/sheets/left_to_ask.hpp"
#include "core/sheets/off_label_floor.hpp"
#include "core/sheets/still_lame.hpp"
#include "core/trade/told_ends.hpp"

namespace evenclaw {

namespace {

std::vector<Filter> of_visit(VisitId visit) {
  return {{"visit", Compare::equal, Cell(to_text(visit))}};
}

/// The visits before this one at which an end of withdrawal was made that is still open.
std::set<VisitId> visits_with_withdrawal(const std::vector<TaskRow>& tasks, VisitId except) {
  std::set<VisitId> visits;
  for (const TaskRow& task : tasks) {
    const bool is_end = task.open && task.kind == TaskKind::withdrawal_end;
    if (is_end && task.visit != except) visits.insert(task.visit);
  }
  return visits;
}

/// Open ones, and those that were closed after the visit.
void fill_tasks(std::vector<TaskRow>& tasks, Faults& faults, Store& store, const Visit& visit) {
  fill(tasks, faults, store, visit.herd, {{"open", Compare::equal, Cell(std::int64_t{1})}});
  std::vector<TaskRow> closed;
  fill(closed, faults, store, visit.herd,
       {{"open", Compare::equal, Cell(std::int64_t{0})},
        {"closed_on", Compare::at_least, Cell(to_text(visit.day + 1))}});
  tasks.insert(tasks.end(), closed.begin(), closed.end());
}

/// What was found in the cases up to that day is looked for only where something came later.
std::vector<FindingRow> findings_until(Faults& faults, Store& store, const Visit& visit,
                                       const std::vector<CaseRow>& cases) {
  std::vector<FindingRow> findings;
  const bool goes_on = std::any_of(cases.begin(), cases.end(), [&](const CaseRow& row) {
    return row.first_day <= visit.day && row.last_day > visit.day;
  });
  if (!goes_on) return findings;
  fill(findings, faults, store, visit.herd, {{"day", Compare::at_most, Cell(to_text(visit.day))}});
  return findings;
}

/// Behind ends that are still open, and what somebody has to be asked of.
void add_earlier_actions(Rows& rows, Faults& faults, Store& store, const Visit& visit) {
  std::vector<ActionRow> earlier;
  fill(earlier, faults, store, visit.herd,
       {{"day", Compare::at_least, Cell(to_text(visit.day - longest_asked_days))},
        {"day", Compare::at_most, Cell(to_text(visit.day))}});
  const std::set<VisitId> with_ends = visits_with_withdrawal(rows.tasks, visit.visit);
  std::erase_if(earlier, [&](const ActionRow& row) {
    const bool is_earlier = row.day < visit.day || with_ends.count(row.visit) > 0;
    return row.visit == visit.visit || !is_earlier;
  });
  const auto below_floor = products_below_floor(store, visit.herd);
  if (!below_floor) {
    faults.insert(faults.end(), below_floor.faults().begin(), below_floor.faults().end());
    return;
  }
  keep_what_may_be_asked(earlier, with_ends, visit.day, *below_floor);
  rows.actions.insert(rows.actions.end(), earlier.begin(), earlier.end());
}

Result<Rows> rows_for_sheet(Store& store, const Visit& visit, Day today) {
  Rows rows;
  Faults faults;
  fill(rows.cows, faults, store, visit.herd, {});
  fill(rows.turns, faults, store, visit.herd, of_visit(visit.visit));
  fill(rows.feet, faults, store, visit.herd, of_visit(visit.visit));
  fill(rows.findings, faults, store, visit.herd, of_visit(visit.visit));
  fill(rows.actions, faults, store, visit.herd, of_visit(visit.visit));
  fill(rows.measures, faults, store, visit.herd, of_visit(visit.visit));
  fill(rows.batches, faults, store, visit.herd, of_visit(visit.visit));
  fill(rows.doubts, faults, store, visit.herd, of_visit(visit.visit));
  fill(rows.cases, faults, store, visit.herd, {});
  fill(rows.on_feet, faults, store, visit.herd, {});
  fill_tasks(rows.tasks, faults, store, visit);
  keep_as_it_stood(rows, visit.day, today, findings_until(faults, store, visit, rows.cases));
  add_earlier_actions(rows, faults, store, visit);
  if (!faults.empty()) return faults;
  let_later_ends_hold(rows.actions);
  std::set<CowId> seen;
  for (const TurnRow& turn : rows.turns) seen.insert(turn.cow);
  for (const TaskRow& task : rows.tasks) {
    if (task.kind == TaskKind::vet) seen.insert(task.cow);
  }
  std::erase_if(rows.cases, [&](const CaseRow& row) { return seen.count(row.cow) == 0; });
  return rows;
}

/// "wrap off left hind is due", "vet to see left hind, farmer rings, is due": that she was not seen
/// is said before it.
std::string why_she_was_expected(std::string words) {
  for (const std::string_view ending : {", and she was not seen", " and she was not seen"}) {
    const bool ends_so = words.size() > ending.size() &&
                         words.compare(words.size() - ending.size(), ending.size(), ending) == 0;
    if (ends_so) words.resize(words.size() - ending.size());
  }
  const std::size_t due = words.rfind(" is due");
  const bool has_parts = due != std::string::npos && words.find(", ") < due;
  if (has_parts) words.insert(due, ",");
  return words;
}

std::vector<NotSeenCow> not_seen_of(const ClosingState& state) {
  std::vector<NotSeenCow> not_seen;
  for (const OpenPoint& point : state.open) {
    const bool missing =
        point.kind == OpenPointKind::due_not_seen || point.kind == OpenPointKind::still_on;
    if (!missing) continue;
    const auto listed = std::find_if(not_seen.begin(), not_seen.end(),
                                     [&](const NotSeenCow& cow) { return cow.cow == point.cow; });
    if (listed == not_seen.end()) {
      not_seen.push_back({point.cow, point.cow_said, why_she_was_expected(point.words)});
    } else {
      listed->why += "; " + why_she_was_expected(point.words);
    }
  }
  return not_seen;
}

/// What no row of a cow tells; who called is no question for the farm.
std::vector<AskedOnSheet> asked_of(const ClosingState& state) {
  std::vector<AskedOnSheet> asked;
  for (const OpenPoint& point : state.open) {
    const bool is_name = point.cow_said == "caller" || point.cow_said == "writer";
    const bool is_for_the_farm = point.kind == OpenPointKind::news_unclear ||
                                 point.kind == OpenPointKind::told_two_ways ||
                                 point.kind == OpenPointKind::number_given_twice ||
                                 point.kind == OpenPointKind::on_since_when;
    if (is_for_the_farm && !is_name) asked.push_back({point.cow_said, point.words});
  }
  return asked;
}

Result<std::vector<RemovedFromSheet>> removed_of(Store& store, const Visit& visit) {
  const auto records = removed_records(store, visit.herd, {visit.visit.value});
  if (!records) return records.faults();
  std::vector<RemovedFromSheet> removed;
  removed.reserve(records->size());
  for (const RemovedRecord& record : *records) {
    removed.push_back({record.cow_said, record.removed_on});
  }
  return removed;
}

Result<VisitRow> row_of(Store& store, const Visit& visit) {
  auto rows = select_as<VisitRow>(store, visit.herd, of_visit(visit.visit));
  if (!rows) return rows.faults();
  if (rows->empty()) {
    return Fault{.slug = "visit-not-found", .message = "The visit is not in the store."};
  }
  return std::move(rows->front());
}

/// Everybody who called or wrote in those turns.
Result<std::vector<NamedPerson>> people_of(const Ports& ports, const std::vector<TurnRow>& turns) {
  const auto everybody = ports.directory.everybody();
  if (!everybody) return everybody.faults();
  std::set<PersonId> ids;
  for (const TurnRow& turn : turns) {
    ids.insert(turn.caller);
    ids.insert(turn.writer);
  }
  ids.erase(PersonId{});
  std::vector<NamedPerson> people;
  people.reserve(ids.size());
  for (const PersonId id : ids) people.push_back({id, name_of(*everybody, id)});
  return people;
}

/// What is to be known beside the bodies of the turns.
struct BesideTurns {
  const std::vector<Person>& people;
  const LocalLaw& law;
};

/// What the list said then stands in the bodies of the turns.
Outcome add_stated(std::vector<ProductStated>& stated, const BesideTurns& beside, Store& store,
                   HerdId herd, VisitId visit) {
  const auto add = [&](EntryId turn, const std::vector<Action>& actions) {
    for (const Action& action : actions) {
      if (!action.medicine) continue;
      const Product& product = action.medicine->as_listed;
      const std::string vet =
          product.directed_by ? name_of(beside.people, *product.directed_by) : "";
      stated.push_back({turn, action.medicine->product, product.stated_by, vet,
                        product.milk.has_value(), product.meat_days.has_value(),
                        least_not_reached(product, beside.law.country)});
    }
  };
  return store.read_entries({herd.value, visit.value, {std::string(TurnRecorded::kind)}},
                            [&](const Entry& entry) {
                              const auto body = body_as<TurnRecorded>(entry);
                              if (!body) return true;
                              for (const FootCall& foot : body->turn.feet) {
                                add(entry.envelope.id, foot.actions);
                              }
                              add(entry.envelope.id, body->turn.actions);
                              return true;
                            });
}

Result<std::vector<ProductStated>> stated_in(const Ports& ports, HerdId herd,
                                             const std::vector<ActionRow>& actions) {
  const auto people = ports.directory.everybody();
  if (!people) return people.faults();
  const auto law = local_law(ports.store);
  if (!law) return law.faults();
  std::set<VisitId> visits;
  for (const ActionRow& row : actions) {
    if (row.listed) visits.insert(row.visit);
  }
  std::vector<ProductStated> stated;
  for (const VisitId visit : visits) {
    const Outcome read = add_stated(stated, {*people, *law}, ports.store, herd, visit);
    if (!read) return read.faults();
  }
  return stated;
}

std::vector<Filter> not_long_before(const VisitRow& visit) {
  return {{"day", Compare::at_least, Cell(to_text(visit.day - longest_ago_days))},
          {"day", Compare::at_most, Cell(to_text(visit.day))}};
}

/// The visit it can be set beside, with what was found then; and who was left lame before.
Outcome add_earlier(VisitSheetInput& input, Store& store) {
  const VisitRow& visit = input.visit;
  std::vector<VisitRow> visits;
  std::vector<TurnRow> turns;
  Faults faults;
  fill(visits, faults, store, visit.herd, not_long_before(visit));
  fill(turns, faults, store, visit.herd, not_long_before(visit));
  if (!faults.empty()) return faults;
  input.still_lame = lame_and_not_lifted(visit, turns);
  auto stops = stops_before(store, visit, turns);
  if (!stops) return stops.faults();
  input.earlier_stops = *std::move(stops);
  const std::optional<VisitId> last = last_comparable(visit, visits, turns);
  if (!last) return Done{};
  VisitBefore before;
  for (const VisitRow& row : visits) {
    if (row.visit == *last) before.visit = row;
  }
  fill(before.rows.turns, faults, store, visit.herd, of_visit(*last));
  fill(before.rows.feet, faults, store, visit.herd, of_visit(*last));
  fill(before.rows.findings, faults, store, visit.herd, of_visit(*last));
  if (!faults.empty()) return faults;
  input.before = std::move(before);
  return Done{};
}

/// What is told beside the rows: warnings, who was not seen, news, what was taken away.
Outcome add_told(VisitSheetInput& input, const Ports& ports, const Visit& visit) {
  auto people = people_of(ports, input.rows.turns);
  if (!people) return people.faults();
  input.people = *std::move(people);
  std::set<EntryId> turns;
  for (const TurnRow& turn : input.rows.turns) turns.insert(turn.turn);
  auto warnings = warnings_of(ports.store, visit.herd, visit.visit, turns);
  if (!warnings) return warnings.faults();
  input.warnings = *std::move(warnings);
  const auto state = closing_state(ports.store, visit);
  if (!state) return state.faults();
  input.not_seen = not_seen_of(*state);
  input.asked = asked_of(*state);
  auto told = news_of_visit(ports.store, visit);
  if (!told) return told.faults();
  input.told = *std::move(told);
  auto removed = removed_of(ports.store, visit);
  if (!removed) return removed.faults();
  input.removed = *std::move(removed);
  return Done{};
}

}  // namespace

Result<VisitSheetInput> sheet_input(const Ports& ports, const Visit& visit, Day today) {
  VisitSheetInput input;
  input.herd_name = visit.herd_name;
  input.caller = visit.caller;
  input.writer = visit.writer;
  input.printed = today;
  auto row = row_of(ports.store, visit);
  if (!row) return row.faults();
  input.visit = *std::move(row);
  auto rows = rows_for_sheet(ports.store, visit, today);
  if (!rows) return rows.faults();
  input.rows = *std::move(rows);
  auto asked = vet_asked_earlier(ports.store, input.visit, input.rows);
  if (!asked) return asked.faults();
  input.vet_asked_before = *std::move(asked);
  auto whom = whom_to_ring(ports);
  if (!whom) return whom.faults();
  input.whom_to_ring = *std::move(whom);
  auto stated = stated_in(ports, visit.herd, input.rows.actions);
  if (!stated) return stated.faults();
  input.stated = *std::move(stated);
  const Outcome medicine = add_medicine_told(input, ports.store);
  if (!medicine) return medicine.faults();
  const Outcome earlier = add_earlier(input, ports.store);
  if (!earlier) return earlier.faults();
  const Outcome told = add_told(input, ports, visit);
  if (!told) return told.faults();
  return input;
}

}  // namespace evenclaw
