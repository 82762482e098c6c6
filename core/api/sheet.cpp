#include "core/api/sheet.hpp"

#include <algorithm>
#include <iterator>
#include <map>
#include <set>
#include <utility>

#include "core/api/cow_names.hpp"
#include "core/api/news_seen.hpp"
#include "core/api/people.hpp"
#include "core/api/removed_records.hpp"
#include "core/api/routine_trims.hpp"
#include "core/base/text.hpp"
#include "core/log/body.hpp"
#include "core/paper/text.hpp"
#include "core/sheets/due_sheet.hpp"
#include "core/sheets/visit_sheet.hpp"
#include "core/sheets/yard_list.hpp"

namespace evenclaw {

namespace {

std::vector<Filter> of_visit(VisitId visit) {
  return {{"visit", Compare::equal, Cell(to_text(visit))}};
}

/// Fills one table of the rows; the first fault is kept.
template <class RowType>
void fill(std::vector<RowType>& into, Faults& faults, Store& store, HerdId herd,
          std::vector<Filter> where) {
  auto rows = select_as<RowType>(store, herd, std::move(where));
  if (rows) {
    into = *std::move(rows);
  } else {
    faults.insert(faults.end(), rows.faults().begin(), rows.faults().end());
  }
}

Result<Rows> rows_for_sheet(Store& store, const Visit& visit) {
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
  fill(rows.tasks, faults, store, visit.herd, {{"open", Compare::equal, Cell(std::int64_t{1})}});
  if (!faults.empty()) return faults;
  std::set<CowId> seen;
  for (const TurnRow& turn : rows.turns) seen.insert(turn.cow);
  const auto not_seen = [&](const auto& row) { return seen.count(row.cow) == 0; };
  rows.cases.erase(std::remove_if(rows.cases.begin(), rows.cases.end(), not_seen),
                   rows.cases.end());
  rows.on_feet.erase(std::remove_if(rows.on_feet.begin(), rows.on_feet.end(), not_seen),
                     rows.on_feet.end());
  return rows;
}

/// What was shown and decided stands in the bodies of the turns that count.
Result<std::vector<TurnWarning>> warnings_of(Store& store, const Visit& visit,
                                             const std::vector<TurnRow>& turns) {
  std::set<EntryId> count;
  for (const TurnRow& turn : turns) count.insert(turn.turn);
  std::vector<TurnWarning> warnings;
  const Outcome read =
      store.read_entries({visit.herd.value, visit.visit.value, {std::string(TurnRecorded::kind)}},
                         [&](const Entry& entry) {
                           const auto body = body_as<TurnRecorded>(entry);
                           if (!body || count.count(entry.envelope.id) == 0) return true;
                           for (const WarningShown& shown : body->warnings) {
                             warnings.push_back({entry.envelope.id, shown});
                           }
                           return true;
                         });
  if (!read) return read.faults();
  return warnings;
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
      not_seen.push_back({point.cow, point.cow_said, point.words});
    } else {
      listed->why += "; " + point.words;
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

/// Day and herd, letters and digits of the name and the rest as single hyphens.
std::string file_name(Day day, const std::string& herd_name) {
  std::string name = to_text(day) + "-";
  for (const char c : fold_case(herd_name)) {
    const bool plain = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
    if (plain) {
      name += c;
    } else if (name.back() != '-') {
      name += '-';
    }
  }
  while (name.back() == '-') name.pop_back();
  return name;
}

std::string file_name(const Visit& visit) {
  const std::string which = visit.ordinal > 1 ? "-" + std::to_string(visit.ordinal) : "";
  return file_name(visit.day, visit.herd_name) + which + ".html";
}

/// Empty when none is open, or when nobody said.
Result<FootSet> feet_of_the_open_visit(Store& store, HerdId herd) {
  const auto visits = select_as<VisitRow>(store, herd, {}, {"day", "ordinal"});
  if (!visits) return visits.faults();
  FootSet feet;
  for (const VisitRow& visit : *visits) {
    if (!visit.closed) feet = visit.todays_feet;
  }
  return feet;
}

SheetMade sheet_of(std::string name, Document document, const SheetLook& look) {
  std::string html = to_html(document, look.fonts);
  std::string text = to_plain_text(document);
  return {std::move(document), std::move(name), std::move(html), std::move(text)};
}

}  // namespace

Result<SheetMade> make_sheet(const Ports& ports, const Visit& visit, Day today,
                             const SheetLook& look) {
  VisitSheetInput input;
  input.herd_name = visit.herd_name;
  input.caller = visit.caller;
  input.writer = visit.writer;
  input.printed = today;
  input.version = look.version;
  auto row = row_of(ports.store, visit);
  if (!row) return row.faults();
  input.visit = *std::move(row);
  auto rows = rows_for_sheet(ports.store, visit);
  if (!rows) return rows.faults();
  input.rows = *std::move(rows);
  auto people = people_of(ports, input.rows.turns);
  if (!people) return people.faults();
  input.people = *std::move(people);
  auto warnings = warnings_of(ports.store, visit, input.rows.turns);
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
  return sheet_of(file_name(visit), visit_sheet(input), look);
}

Result<SheetMade> make_due_sheet(Store& store, const Herd& herd, Day today, const SheetLook& look) {
  DueSheetInput input;
  input.herd_name = herd.name;
  input.today = today;
  input.version = look.version;
  Faults faults;
  fill(input.cows, faults, store, herd.herd, {});
  fill(input.tasks, faults, store, herd.herd, {{"open", Compare::equal, Cell(std::int64_t{1})}});
  fill(input.handling, faults, store, herd.herd, {});
  const auto trims = routine_trims(store, herd.herd, today);
  if (!trims) faults.insert(faults.end(), trims.faults().begin(), trims.faults().end());
  if (!faults.empty()) return faults;
  input.tasks.insert(input.tasks.end(), trims->begin(), trims->end());
  std::set<CowId> left;
  for (const CowRow& cow : input.cows) {
    if (cow.left_on) left.insert(cow.cow);
  }
  std::erase_if(input.tasks, [&](const TaskRow& task) { return left.count(task.cow) > 0; });
  std::erase_if(input.handling, [&](const HandlingRow& row) { return left.count(row.cow) > 0; });
  auto feet = feet_of_the_open_visit(store, herd.herd);
  if (!feet) return feet.faults();
  Document document = due_sheet(input);
  std::vector<Block> pages = writing_pages(input, *feet);
  std::vector<Block> yard = before_leaving();
  std::move(yard.begin(), yard.end(), std::back_inserter(pages));
  std::move(pages.begin(), pages.end(), std::back_inserter(document.blocks));
  return sheet_of(file_name(today, herd.name) + "-due.html", std::move(document), look);
}

}  // namespace evenclaw
