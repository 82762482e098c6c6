// A foot that hurts enough for a block, and nobody talked of pain relief.
#include <algorithm>
#include <utility>

#include "core/trade/checks/situation.hpp"
#include "core/trade/spoken.hpp"

namespace evenclaw {

namespace {

bool pain_relief_talked_of(const Turn& turn) {
  return was_called(turn, ActionKind::pain_relief_asked) ||
         was_called(turn, ActionKind::pain_relief_given);
}

bool is_blocked_anew(const FootCall& call) {
  return std::any_of(call.actions.begin(), call.actions.end(), [](const Action& action) {
    return action.kind == ActionKind::block_on || action.kind == ActionKind::block_again;
  });
}

/// Blocked for pain, or so bad that no claw could take the block.
bool calls_for_pain_relief(const Turn& turn, const FootCall& call) {
  const bool outside = painful_finding(call, Claw::outside) != nullptr;
  const bool inside = painful_finding(call, Claw::inside) != nullptr;
  const bool painful = outside || inside || turn.lame.has(call.foot);
  return (is_blocked_anew(call) && painful) || (outside && inside);
}

}  // namespace

std::vector<Firing> no_pain_relief_said(const Situation& situation) {
  const Turn& turn = situation.turn;
  if (!situation.finished || pain_relief_talked_of(turn)) return {};
  const auto call = std::find_if(turn.feet.begin(), turn.feet.end(), [&](const FootCall& each) {
    return calls_for_pain_relief(turn, each);
  });
  if (call == turn.feet.end()) return {};
  Firing firing;
  firing.warning.foot = call->foot;
  firing.warning.words = sentence(std::string(spoken(call->foot))) +
                         " hurts: pain relief was not talked about; farmer or vet.";
  firing.causes = {{call->foot, About::block}};
  return {firing};
}

}  // namespace evenclaw
