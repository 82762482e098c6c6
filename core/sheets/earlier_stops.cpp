#include "core/sheets/earlier_stops.hpp"

#include <algorithm>
#include <span>
#include <tuple>

#include "core/sheets/notifiable.hpp"
#include "core/sheets/signs_for_vet.hpp"
#include "core/sheets/vet_stops.hpp"
#include "core/trade/after_leaving.hpp"

namespace evenclaw {

namespace {

bool is_before(const EarlierStop& stop, const VisitRow& visit, const std::vector<TurnRow>& turns) {
  const bool is_of_visit = std::any_of(turns.begin(), turns.end(), [&](const TurnRow& turn) {
    return turn.turn == stop.turn && turn.visit == visit.visit;
  });
  return !is_of_visit && stop.on <= visit.day;
}

/// That a foot was lifted tells nothing of what was there.
bool was_looked_at_since(const EarlierStop& stop, const VisitRow& visit,
                         const std::vector<FootRow>& feet) {
  return std::any_of(feet.begin(), feet.end(), [&](const FootRow& row) {
    const bool is_since = row.cow == stop.cow && stop.on < row.day && row.day <= visit.day;
    const bool is_said = row.state == FootState::finding || row.state == FootState::nothing_found;
    return is_since && is_said && (!stop.warning.foot || row.foot == *stop.warning.foot);
  });
}

bool was_vet_asked(const EarlierStop& stop, const VisitRow& visit,
                   const std::vector<TaskRow>& vet_tasks) {
  return std::any_of(vet_tasks.begin(), vet_tasks.end(), [&](const TaskRow& task) {
    const bool is_hers = task.cow == stop.cow && task.kind == TaskKind::vet;
    return is_hers && stop.on <= task.made_on && task.made_on <= visit.day;
  });
}

/// She left with the task open: then nobody came.
bool has_vet_come(const EarlierStop& stop, const std::vector<TaskRow>& vet_tasks) {
  return std::any_of(vet_tasks.begin(), vet_tasks.end(), [&](const TaskRow& task) {
    const bool is_hers = task.cow == stop.cow && task.kind == TaskKind::vet;
    const bool is_closed = task.closed_on && stop.on <= *task.closed_on;
    return is_hers && is_closed && task.closed_how != closed_as_she_left;
  });
}

}  // namespace

bool lasts_though_gone_past(const WarningShown& shown) {
  if (shown.warning.rank != Rank::stop || shown.decision != went_ahead) return false;
  const std::span<const SignForVet> signs = signs_for_vet();
  return std::any_of(signs.begin(), signs.end(), [&](const SignForVet& sign) {
    const bool is_on_record = sign.seen || sign.found || sign.urgency == VetUrgency::reportable;
    return is_on_record && sign.urgency != VetUrgency::at_once && sign.check == shown.warning.rule;
  });
}

std::vector<EarlierStop> stops_left_open(const VisitRow& visit,
                                         const std::vector<EarlierStop>& unsettled,
                                         const std::vector<TurnRow>& turns,
                                         const std::vector<FootRow>& feet,
                                         const std::vector<TaskRow>& vet_tasks) {
  std::vector<EarlierStop> open;
  for (const EarlierStop& stop : unsettled) {
    const bool is_for_vet = stop.was_only_seen || calls_for_vet(stop.warning);
    if (!is_for_vet || !is_before(stop, visit, turns) || has_vet_come(stop, vet_tasks)) continue;
    const bool is_settled =
        was_looked_at_since(stop, visit, feet) || was_vet_asked(stop, visit, vet_tasks);
    if (is_settled && !tells_of_illness(stop)) continue;
    open.push_back(stop);
    if (is_settled) open.back().is_settled_alone = true;
  }
  std::sort(open.begin(), open.end(), [](const EarlierStop& a, const EarlierStop& b) {
    return std::tie(a.cow, a.on, a.turn, a.warning.foot, a.warning.rule) <
           std::tie(b.cow, b.on, b.turn, b.warning.foot, b.warning.rule);
  });
  return open;
}

void tell_found_then(std::vector<EarlierStop>& stops, const std::vector<FindingRow>& findings,
                     const Wording& wording) {
  for (EarlierStop& stop : stops) {
    if (stop.was_only_seen || !stop.warning.foot) continue;
    std::vector<std::string> found;
    for (const FindingRow& row : findings) {
      const bool is_it = row.turn == stop.turn && row.foot == *stop.warning.foot;
      if (is_it) found.push_back(wording.finding_at_claw(row));
    }
    stop.found = wording.list(found);
  }
}

}  // namespace evenclaw
