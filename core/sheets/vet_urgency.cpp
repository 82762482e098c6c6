#include "core/sheets/vet_urgency.hpp"

#include <algorithm>
#include <set>

#include "core/sheets/notifiable.hpp"
#include "core/sheets/task_blocks.hpp"
#include "core/sheets/vet_on_record.hpp"
#include "core/sheets/vet_stops.hpp"

namespace evenclaw {

namespace {

VetUrgency sooner(VetUrgency a, VetUrgency b) {
  return std::min(a, b);
}

VetUrgency of_signs(const VisitView& view, const CowSeen& cow) {
  VetUrgency urgency = VetUrgency::later;
  if (may_be_notifiable(view, cow.cow)) urgency = VetUrgency::reportable;
  for (const SignOfHer& sign : signs_of_her(cow)) {
    if (vet_on_record(view, cow, sign) == VetOnRecord::knows) continue;
    urgency = sooner(urgency, sign.sign->urgency);
  }
  if (!vet_only_named(view, cow).empty()) urgency = sooner(urgency, VetUrgency::today);
  for (const Warning* stop : open_vet_stops(view, cow)) {
    for (const SignForVet& sign : signs_for_vet()) {
      if (sign.check == stop->rule) urgency = sooner(urgency, sign.urgency);
    }
  }
  return urgency;
}

std::set<CowId> cows_called_for(const VisitView& view) {
  std::set<CowId> cows;
  for (const TaskRow* task : view.tasks) {
    if (is_for_vet(*task)) cows.insert(task->cow);
  }
  for (const CowSeen& cow : view.cows) {
    const bool is_called = !open_vet_stops(view, cow).empty() ||
                           !signs_without_vet(view, cow).empty() ||
                           !vet_only_named(view, cow).empty();
    if (is_called) cows.insert(cow.cow);
  }
  for (const EarlierStop& stop : view.input.earlier_stops) {
    if (!open_earlier_stops(view, stop.cow).empty()) cows.insert(stop.cow);
  }
  return cows;
}

VetUrgency urgency_of(const VisitView& view, CowId id) {
  const CowSeen* cow = find_cow(view, id);
  const bool is_due = std::any_of(view.tasks.begin(), view.tasks.end(), [&](const TaskRow* task) {
    return task->cow == id && is_for_vet(*task) && task->due <= view.input.printed;
  });
  const std::vector<const EarlierStop*> earlier = open_earlier_stops(view, id);
  const bool is_reported =
      std::any_of(earlier.begin(), earlier.end(),
                  [&](const EarlierStop* stop) { return is_reportable(view, *stop); });
  if (is_reported) return VetUrgency::reportable;
  const bool is_now = is_due || !earlier.empty();
  const VetUrgency by_task = is_now ? VetUrgency::today : VetUrgency::later;
  return cow == nullptr ? by_task : sooner(by_task, of_signs(view, *cow));
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
