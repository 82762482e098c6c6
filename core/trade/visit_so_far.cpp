#include "core/trade/visit_so_far.hpp"

#include <algorithm>

namespace evenclaw {

namespace {

bool has(const std::vector<Action>& actions, ActionKind kind) {
  return std::any_of(actions.begin(), actions.end(),
                     [kind](const Action& action) { return action.kind == kind; });
}

bool has(const std::vector<Finding>& findings, Lesion lesion) {
  return std::any_of(findings.begin(), findings.end(),
                     [lesion](const Finding& finding) { return finding.lesion == lesion; });
}

bool has_sores(const Turn& turn) {
  return was_called(turn, ActionKind::sore_mouth) || was_called(turn, ActionKind::blisters);
}

}  // namespace

void count_in(VisitSoFar& so_far, const Turn& turn, bool same_caller) {
  if (has_sores(turn)) ++so_far.cows_with_sores;
  if (!same_caller) return;
  so_far.feet_bled += feet_with(turn, Lesion::blood_drawn);
  if (feet_with(turn, Lesion::ts) > 0) ++so_far.cows_with_thin_soles;
}

int feet_with(const Turn& turn, Lesion lesion) {
  return static_cast<int>(
      std::count_if(turn.feet.begin(), turn.feet.end(),
                    [lesion](const FootCall& call) { return has(call.findings, lesion); }));
}

bool was_called(const Turn& turn, ActionKind kind) {
  return has(turn.actions, kind) ||
         std::any_of(turn.feet.begin(), turn.feet.end(),
                     [kind](const FootCall& call) { return has(call.actions, kind); });
}

}  // namespace evenclaw
