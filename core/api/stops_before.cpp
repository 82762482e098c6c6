#include "core/api/stops_before.hpp"

#include <algorithm>
#include <iterator>
#include <map>
#include <optional>
#include <string>
#include <utility>

#include "core/api/filled_rows.hpp"
#include "core/log/bodies.hpp"
#include "core/log/body.hpp"
#include "core/sheets/earlier_signs.hpp"
#include "core/sheets/earlier_stops.hpp"
#include "core/sheets/last_time.hpp"

namespace evenclaw {

namespace {

std::set<EntryId> ids_of(const std::vector<TurnRow>& turns) {
  std::set<EntryId> ids;
  for (const TurnRow& turn : turns) ids.insert(turn.turn);
  return ids;
}

/// Every Stop of other visits that was left unanswered, not too long ago. Bodies are read only of
/// visits with a turn that was stopped: `turns` are all of that time.
Result<std::vector<EarlierStop>> unanswered_stops(Store& store, const VisitRow& visit,
                                                  const std::vector<TurnRow>& turns) {
  std::set<EntryId> stopped;
  for (const TurnRow& turn : turns) {
    if (turn.stops > 0) stopped.insert(turn.turn);
  }
  std::vector<DoubtRow> doubts;
  Faults faults;
  fill(doubts, faults, store, visit.herd,
       {{"kind", Compare::equal, Cell(std::string(word_of(DoubtKind::unanswered)))},
        {"day", Compare::at_least, Cell(to_text(visit.day - longest_ago_days))},
        {"day", Compare::at_most, Cell(to_text(visit.day))}});
  if (!faults.empty()) return faults;
  std::map<VisitId, std::map<EntryId, const DoubtRow*>> asked;
  for (const DoubtRow& row : doubts) {
    const bool is_meant = row.visit != visit.visit && stopped.count(row.turn) > 0;
    if (is_meant) asked[row.visit].emplace(row.turn, &row);
  }
  std::vector<EarlierStop> stops;
  for (const auto& [other, of_it] : asked) {
    std::set<EntryId> ids;
    for (const auto& [turn, doubt] : of_it) ids.insert(turn);
    const auto warnings = warnings_of(store, visit.herd, other, ids);
    if (!warnings) return warnings.faults();
    for (const auto& [turn, shown] : *warnings) {
      const bool is_open = shown.warning.rank == Rank::stop && shown.decision.empty();
      const DoubtRow& doubt = *of_it.at(turn);
      if (is_open) stops.push_back({doubt.cow, turn, doubt.day, shown.warning, false});
    }
  }
  return stops;
}

/// Stops of other visits against which somebody went ahead, and whose sign lasts.
Result<std::vector<EarlierStop>> stops_gone_past(Store& store, const VisitRow& visit,
                                                 const std::vector<TurnRow>& turns) {
  std::map<VisitId, std::map<EntryId, const TurnRow*>> stopped;
  for (const TurnRow& turn : turns) {
    if (turn.stops > 0 && turn.visit != visit.visit) stopped[turn.visit].emplace(turn.turn, &turn);
  }
  std::vector<EarlierStop> stops;
  for (const auto& [other, of_it] : stopped) {
    std::set<EntryId> ids;
    for (const auto& [id, turn] : of_it) ids.insert(id);
    const auto warnings = warnings_of(store, visit.herd, other, ids);
    if (!warnings) return warnings.faults();
    for (const auto& [id, shown] : *warnings) {
      if (!lasts_though_gone_past(shown)) continue;
      const TurnRow& turn = *of_it.at(id);
      stops.push_back({turn.cow, id, turn.day, shown.warning, true});
    }
  }
  return stops;
}

std::vector<Filter> not_long_until(const VisitRow& visit) {
  return {{"day", Compare::at_least, Cell(to_text(visit.day - longest_ago_days))},
          {"day", Compare::at_most, Cell(to_text(visit.day))}};
}

template <class Row>
std::vector<Row> rows_of(const std::vector<Row>& rows, VisitId visit) {
  std::vector<Row> of_it;
  std::copy_if(rows.begin(), rows.end(), std::back_inserter(of_it),
               [&](const Row& row) { return row.visit == visit; });
  return of_it;
}

/// An earlier visit as it was, as far as it tells of signs and of the vet.
Result<VisitSheetInput> as_it_was(Store& store, const Rows& earlier, HerdId herd, VisitId visit) {
  VisitSheetInput then;
  then.rows.turns = rows_of(earlier.turns, visit);
  then.rows.feet = rows_of(earlier.feet, visit);
  then.rows.findings = rows_of(earlier.findings, visit);
  then.rows.actions = rows_of(earlier.actions, visit);
  then.visit.herd = herd;
  then.visit.visit = visit;
  then.visit.day = then.printed = then.rows.turns.front().day;
  auto warnings = warnings_of(store, herd, visit, ids_of(then.rows.turns));
  if (!warnings) return warnings.faults();
  then.warnings = *std::move(warnings);
  return then;
}

/// Only of visits of which something is left are the bodies read.
Result<std::vector<EarlierStop>> signs_without_stop(Store& store, const VisitRow& visit,
                                                    const Rows& earlier,
                                                    const std::vector<EarlierStop>& stops) {
  std::map<EntryId, VisitId> visits;
  for (const TurnRow& turn : earlier.turns) visits[turn.turn] = turn.visit;
  std::map<VisitId, std::vector<EarlierStop>> seen;
  for (EarlierStop& sign : stops_left_open(visit, signs_seen(earlier, english_wording()),
                                           earlier.turns, earlier.feet, earlier.tasks)) {
    const auto of = visits.find(sign.turn);
    if (of != visits.end()) seen[of->second].push_back(std::move(sign));
  }
  std::vector<EarlierStop> signs;
  for (const auto& [other, of_it] : seen) {
    const auto then = as_it_was(store, earlier, visit.herd, other);
    if (!then) return then.faults();
    for (EarlierStop& sign : signs_not_settled(*then, of_it, stops)) {
      signs.push_back(std::move(sign));
    }
  }
  return signs;
}

/// That the vet came is told of a cow for whom nobody asked, too: then it closes no task. It stands
/// among them as one that was made and closed that day.
Outcome add_vet_came(std::vector<TaskRow>& tasks, Store& store, const VisitRow& visit) {
  return store.read_entries({visit.herd.value, std::nullopt, {std::string(TaskClosedBody::kind)}},
                            [&](const Entry& entry) {
                              const auto told = body_as<TaskClosedBody>(entry);
                              const bool is_it =
                                  told && told->news == News::vet_came && !told->asked;
                              if (!is_it || told->day > visit.day) return true;
                              TaskRow row;
                              row.cow = told->cow;
                              row.kind = TaskKind::vet;
                              row.made_on = told->day;
                              row.open = false;
                              row.closed_on = told->day;
                              tasks.push_back(row);
                              return true;
                            });
}

}  // namespace

Result<std::vector<TurnWarning>> warnings_of(Store& store, HerdId herd, VisitId visit,
                                             const std::set<EntryId>& count) {
  std::vector<TurnWarning> warnings;
  const Outcome read = store.read_entries(
      {herd.value, visit.value, {std::string(TurnRecorded::kind)}}, [&](const Entry& entry) {
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

Result<std::vector<EarlierStop>> stops_before(Store& store, const VisitRow& visit,
                                              const std::vector<TurnRow>& turns) {
  auto unsettled = unanswered_stops(store, visit, turns);
  if (!unsettled) return unsettled.faults();
  const auto gone_past = stops_gone_past(store, visit, turns);
  if (!gone_past) return gone_past.faults();
  unsettled->insert(unsettled->end(), gone_past->begin(), gone_past->end());
  Rows earlier;
  earlier.turns = turns;
  Faults faults;
  fill(earlier.feet, faults, store, visit.herd, not_long_until(visit));
  fill(earlier.findings, faults, store, visit.herd, not_long_until(visit));
  fill(earlier.actions, faults, store, visit.herd, not_long_until(visit));
  fill(earlier.tasks, faults, store, visit.herd,
       {{"kind", Compare::equal, Cell(std::string(word_of(TaskKind::vet)))}});
  if (!faults.empty()) return faults;
  const Outcome came = add_vet_came(earlier.tasks, store, visit);
  if (!came) return came.faults();
  const auto signs = signs_without_stop(store, visit, earlier, *unsettled);
  if (!signs) return signs.faults();
  unsettled->insert(unsettled->end(), signs->begin(), signs->end());
  auto open = stops_left_open(visit, *unsettled, turns, earlier.feet, earlier.tasks);
  tell_found_then(open, earlier.findings, english_wording());
  return open;
}

}  // namespace evenclaw
