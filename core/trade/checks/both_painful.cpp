// Both claws of a foot hurt: there is no good one to put a block on.
#include <algorithm>
#include <utility>

#include "core/trade/call_line/offered.hpp"
#include "core/trade/checks/situation.hpp"
#include "core/trade/spoken.hpp"

namespace evenclaw {

namespace {

/// Once a claw is named for the block, the check of that block speaks.
bool claw_named_for_block(const FootCall& call) {
  return std::any_of(call.actions.begin(), call.actions.end(), [](const Action& action) {
    const std::optional<FixtureSaid> said = fixture_said(action.kind);
    return said && said->fixture == Fixture::block && is_on_after(said->step) &&
           is_called(action.claw);
  });
}

/// That is foul until somebody knows better, and its check speaks.
bool is_swollen_all_round(const Finding& outside, const Finding& inside) {
  return outside.lesion == Lesion::sw && outside == inside;
}

}  // namespace

std::vector<Firing> both_claws_painful(const Situation& situation) {
  std::vector<Firing> firings;
  if (vet_called(situation.turn)) return firings;
  for (const FootCall& call : situation.turn.feet) {
    const Finding* outside = painful_finding(call, Claw::outside);
    const Finding* inside = painful_finding(call, Claw::inside);
    if (outside == nullptr || inside == nullptr || claw_named_for_block(call)) continue;
    if (is_swollen_all_round(*outside, *inside)) continue;
    Firing firing;
    firing.warning.foot = call.foot;
    firing.warning.claw = Claw::both;
    firing.warning.words = sentence(std::string(spoken(call.foot))) +
                           ": both claws hurt, no good one for a block. Vet?";
    firing.warning.answers = vet_or_go_ahead(call.foot, situation.language);
    firing.causes = {{call.foot, About::block}};
    firings.push_back(std::move(firing));
  }
  return firings;
}

}  // namespace evenclaw
