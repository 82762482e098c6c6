#include "core/trade/call_line/claw_instead.hpp"

#include <algorithm>

#include "core/trade/call_line/said_again.hpp"
#include "core/trade/on_foot.hpp"

namespace evenclaw {

std::optional<ClawInstead> claw_instead(const TurnDraft& draft, const TurnClause& clause) {
  const auto* said = std::get_if<FindingSaid>(&clause);
  if (said == nullptr || !said->instead || !is_called(said->finding.claw)) return std::nullopt;
  if (draft.feet_named.count() != 1) return std::nullopt;
  const auto call =
      std::find_if(draft.turn.feet.begin(), draft.turn.feet.end(),
                   [&](const FootCall& each) { return draft.feet_named.has(each.foot); });
  if (call == draft.turn.feet.end()) return std::nullopt;
  const Finding* called = nullptr;
  for (const Finding& finding : call->findings) {
    if (finding.lesion != said->finding.lesion) continue;
    if (called != nullptr) return std::nullopt;
    called = &finding;
  }
  if (called == nullptr) return std::nullopt;
  ClawInstead mended{{*called}, *said};
  complete(mended.right.finding, *called);
  mended.right.instead = false;
  return mended;
}

}  // namespace evenclaw
