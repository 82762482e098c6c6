#include "core/sheets/vet_first.hpp"

#include <algorithm>

#include "core/sheets/left_for_vet.hpp"
#include "core/sheets/vet_calls.hpp"
#include "core/sheets/vet_urgency.hpp"

namespace evenclaw {

namespace {

/// He is to see that foot, or her, and not only to be asked about.
bool is_any_call_to(const std::vector<VetCall>& calls, std::optional<Foot> foot) {
  return std::any_of(calls.begin(), calls.end(), [&](const VetCall& call) {
    const bool is_order = call.is_to_see_her && !call.is_only_asked;
    return is_order && (!call.foot || !foot || call.foot == foot);
  });
}

bool is_left_alone_there(const VisitView& view, CowId id, Foot foot) {
  const CowSeen* cow = find_cow(view, id);
  if (cow == nullptr) return false;
  const std::vector<std::string> left = left_for_vet(view, *cow, foot);
  const std::string alone = view.wording.say(Saying::leave_foot_alone);
  return std::find(left.begin(), left.end(), alone) != left.end();
}

/// What she is told to get, without a condition; "" of what goes with the vet's box as it is.
std::string bare_order(const VisitView& view, const TaskRow& task) {
  const Wording& wording = view.wording;
  if (task.owner != Owner::farmer) return {};
  if (task.kind == TaskKind::watch_her_walk) return task_words(task.kind, task.foot, task.claw);
  if (task.kind == TaskKind::look_at_foot) {
    return task.foot ? wording.say(BoxSaying::look_again, {{"foot", wording.foot(*task.foot)}})
                     : wording.say(BoxSaying::look_at_her_again);
  }
  const bool is_wrap = task.kind == TaskKind::wrap_off && task.foot;
  return is_wrap && is_left_alone_there(view, task.cow, *task.foot) ? task.words : std::string();
}

}  // namespace

void tell_vet_first(VisitView& view) {
  for (const CowForVet& called : cows_for_vet(view)) {
    const std::vector<VetCall> calls = vet_calls(view, called.cow);
    for (TaskRow& task : view.open_rows) {
      if (task.cow != called.cow || !is_any_call_to(calls, task.foot)) continue;
      const std::string what = bare_order(view, task);
      if (!what.empty()) task.words = view.wording.say(BoxSaying::vet_first, {{"what", what}});
    }
  }
}

}  // namespace evenclaw
