// A lesion that does not heal: found at a third visit, blocked again and again.
#include <optional>
#include <utility>

#include "core/trade/call_line/offered.hpp"
#include "core/trade/checks/situation.hpp"
#include "core/trade/second_failure.hpp"
#include "core/trade/spoken.hpp"

namespace evenclaw {

namespace {

std::optional<Firing> asked_about_case(const Situation& situation, const FootCall& call) {
  const Finding* finding = found_at_third_visit(situation.past.rows, call, situation.today);
  if (finding == nullptr) return std::nullopt;
  Firing firing;
  firing.warning.foot = call.foot;
  firing.warning.claw = finding->claw;
  firing.warning.words = "Third visit or more with the " + spoken_name(*finding) + " (" +
                         spoken_where(call.foot, finding->claw) + "): vet?";
  firing.warning.answers = vet_or_go_ahead(call.foot, situation.language);
  firing.causes = {{call.foot, About::not_healing}};
  return firing;
}

Firing about_block(const FootCall& call, const Action& action) {
  Firing firing;
  firing.warning.foot = call.foot;
  firing.warning.claw = action.claw;
  firing.causes = {{call.foot, About::not_healing}};
  return firing;
}

}  // namespace

std::vector<Firing> blocked_again_twice(const Situation& situation) {
  std::vector<Firing> firings;
  if (vet_called(situation.turn)) return firings;
  for (const FootCall& call : situation.turn.feet) {
    const Action* again = blocked_again_on(call);
    if (again == nullptr) continue;
    const std::optional<Day> before =
        blocked_again_before(situation.past.rows, call.foot, again->claw, situation.today);
    if (!before) continue;
    Firing firing = about_block(call, *again);
    firing.warning.words = "Blocked again (" + spoken_where(call.foot, again->claw) + "), as on " +
                           spoken(*before) + ": it does not heal. Vet?";
    firing.warning.answers = vet_or_go_ahead(call.foot, situation.language);
    firings.push_back(std::move(firing));
  }
  return firings;
}

std::vector<Firing> third_visit_same_lesion(const Situation& situation) {
  std::vector<Firing> firings;
  if (vet_called(situation.turn)) return firings;
  for (const FootCall& call : situation.turn.feet) {
    std::optional<Firing> firing = asked_about_case(situation, call);
    if (firing) firings.push_back(std::move(*firing));
  }
  return firings;
}

std::vector<Firing> blocked_again(const Situation& situation) {
  std::vector<Firing> firings;
  if (!situation.finished) return firings;
  for (const FootCall& call : situation.turn.feet) {
    const Action* again = blocked_again_on(call);
    if (again == nullptr) continue;
    Firing firing = about_block(call, *again);
    firing.warning.words = "Not healed and blocked again (" + spoken_where(call.foot, again->claw) +
                           "): the vet should see it.";
    firings.push_back(std::move(firing));
  }
  return firings;
}

}  // namespace evenclaw
