#include "core/sheets/vet_urgency.hpp"

#include <algorithm>
#include <iterator>
#include <set>
#include <string_view>

#include "core/sheets/left_for_vet.hpp"
#include "core/sheets/task_blocks.hpp"
#include "core/sheets/vet_stops.hpp"

namespace evenclaw {

namespace {

// Blood that does not stop and a cow that is down can be dead within the hour, and a disease the
// law wants reported leaves the farm with the next lorry: whoever reads one line only reads these.
// Then what is due today, then the rest. Our judgement, no source.
constexpr ActionKind signs_at_once[] = {ActionKind::bleeding, ActionKind::went_down};
constexpr std::string_view stops_at_once[] = {"bleeding-goes-on", "down-in-the-crush",
                                              "notifiable-signs"};

bool is_stop_at_once(const Warning& warning) {
  return std::find(std::begin(stops_at_once), std::end(stops_at_once), warning.rule) !=
         std::end(stops_at_once);
}

bool is_sign_at_once(const ActionRow* row) {
  return std::find(std::begin(signs_at_once), std::end(signs_at_once), row->action) !=
         std::end(signs_at_once);
}

bool is_needed_at_once(const VisitView& view, const CowSeen& cow) {
  const std::vector<const Warning*> stops = open_vet_stops(view, cow);
  return std::any_of(cow.actions.begin(), cow.actions.end(), is_sign_at_once) ||
         may_be_notifiable(view, cow) ||
         std::any_of(stops.begin(), stops.end(),
                     [](const Warning* stop) { return is_stop_at_once(*stop); });
}

std::set<CowId> cows_called_for(const VisitView& view) {
  std::set<CowId> cows;
  for (const TaskRow* task : view.tasks) {
    if (is_for_vet(*task)) cows.insert(task->cow);
  }
  for (const CowSeen& cow : view.cows) {
    if (!open_vet_stops(view, cow).empty()) cows.insert(cow.cow);
  }
  for (const EarlierStop& stop : view.input.earlier_stops) {
    if (!open_earlier_stops(view, stop.cow).empty()) cows.insert(stop.cow);
  }
  return cows;
}

VetUrgency urgency_of(const VisitView& view, CowId id) {
  const CowSeen* cow = find_cow(view, id);
  if (cow != nullptr && is_needed_at_once(view, *cow)) return VetUrgency::at_once;
  const bool is_stopped = cow != nullptr && !open_vet_stops(view, *cow).empty();
  const bool is_due = std::any_of(view.tasks.begin(), view.tasks.end(), [&](const TaskRow* task) {
    return task->cow == id && is_for_vet(*task) && task->due <= view.input.printed;
  });
  const bool is_now = is_stopped || is_due || !open_earlier_stops(view, id).empty();
  return is_now ? VetUrgency::today : VetUrgency::later;
}

}  // namespace

std::vector<CowForVet> cows_for_vet(const VisitView& view) {
  std::vector<CowForVet> cows;
  for (const CowId cow : cows_called_for(view)) cows.push_back({cow, urgency_of(view, cow)});
  std::sort(cows.begin(), cows.end(), [&](const CowForVet& a, const CowForVet& b) {
    if (a.urgency != b.urgency) return a.urgency < b.urgency;
    return view.names.before(a.cow, b.cow);
  });
  return cows;
}

}  // namespace evenclaw
