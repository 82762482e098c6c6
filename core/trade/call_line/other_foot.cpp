#include "core/trade/call_line/other_foot.hpp"

namespace evenclaw {

std::optional<Foot> other_foot_named(const TurnDraft& draft, const OtherFootNamed& said) {
  FootSet spoken_of;
  FootSet named_now;
  for (const Foot foot : all_feet) {
    if (!said.among.has(foot)) continue;
    const FootCall* call = find_foot(draft.turn, foot);
    if (call != nullptr) spoken_of.add(FootSet{foot});
    if (draft.feet_named.has(foot)) named_now.add(FootSet{foot});
  }
  const FootSet& first = spoken_of.count() == 1 ? spoken_of : named_now;
  if (first.count() != 1) return std::nullopt;
  for (const Foot foot : all_feet) {
    if (said.among.has(foot) && !first.has(foot)) return foot;
  }
  return std::nullopt;
}

}  // namespace evenclaw
