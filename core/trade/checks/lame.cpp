// A cow that came lame must not leave with nothing found on the lame leg and nobody having looked
// higher.
#include <algorithm>
#include <optional>

#include "core/trade/call_line/offered.hpp"
#include "core/trade/checks/situation.hpp"
#include "core/trade/spoken.hpp"

namespace evenclaw {

namespace {

bool has_vet(const std::vector<Action>& actions) {
  return std::any_of(actions.begin(), actions.end(),
                     [](const Action& action) { return action.kind == ActionKind::vet; });
}

bool nothing_found_on(const Turn& turn, Foot foot) {
  const FootCall* call = find_foot(turn, foot);
  return call != nullptr && call->state == FootState::nothing_found && call->findings.empty();
}

/// Nobody lifted it, or nobody said a word of it.
bool not_looked_at(const Turn& turn, Foot foot) {
  const FootCall* call = find_foot(turn, foot);
  return call == nullptr || call->state == FootState::not_lifted;
}

/// Named and nothing more: nobody worked on it and nobody said what was found.
bool only_named(const FootCall& call) {
  return call.state == FootState::unsaid && call.actions.empty() && call.measures.empty() &&
         call.trimmed == Trimmed::not_called;
}

std::vector<std::string> vet_or_go_ahead(std::optional<Foot> foot, const Language& language) {
  return {offered_act(foot, ActionKind::vet, Claw::none, language), offered_go_ahead(language)};
}

Firing lame_on(Foot foot, std::string_view what, const Language& language) {
  Firing firing;
  firing.warning.foot = foot;
  firing.warning.words = "Came lame " + std::string(spoken(foot)) + std::string(what);
  firing.warning.answers = vet_or_go_ahead(foot, language);
  firing.causes = {{foot, About::finding}};
  return firing;
}

bool something_was_found(const Turn& turn) {
  return std::any_of(turn.feet.begin(), turn.feet.end(),
                     [](const FootCall& call) { return !call.findings.empty(); });
}

bool some_foot_found_fine(const Turn& turn) {
  return std::any_of(all_feet.begin(), all_feet.end(),
                     [&](Foot foot) { return nothing_found_on(turn, foot); });
}

bool feet_only_named(const Turn& turn) {
  return !turn.feet.empty() && std::all_of(turn.feet.begin(), turn.feet.end(), only_named);
}

Firing lame_leg_unknown(const Language& language) {
  Firing firing;
  firing.warning.words = "Came lame, nothing found: look at all four, look higher, or vet.";
  firing.warning.answers = vet_or_go_ahead(std::nullopt, language);
  for (const Foot foot : all_feet) firing.causes.push_back({foot, About::finding});
  return firing;
}

bool vet_called(const Turn& turn) {
  return has_vet(turn.actions) ||
         std::any_of(turn.feet.begin(), turn.feet.end(),
                     [](const FootCall& call) { return has_vet(call.actions); });
}

}  // namespace

std::vector<Firing> lame_nothing_found(const Situation& situation) {
  const Turn& turn = situation.turn;
  std::vector<Firing> firings;
  if (has_vet(turn.actions)) return firings;
  const bool let_out = situation.finished && turn.end == TurnEnd::done;
  for (const Foot foot : all_feet) {
    const FootCall* call = find_foot(turn, foot);
    if (!turn.lame.has(foot) || (call != nullptr && has_vet(call->actions))) continue;
    if (nothing_found_on(turn, foot)) {
      firings.push_back(
          lame_on(foot, ", nothing found: look again, look higher, or vet.", situation.language));
    } else if (let_out && not_looked_at(turn, foot)) {
      firings.push_back(
          lame_on(foot, ", and that foot was not lifted: lift it, or vet.", situation.language));
    }
  }
  const bool leg_unknown = came_for(turn, Reason::lame) && turn.lame.empty();
  const bool none_found =
      (some_foot_found_fine(turn) || feet_only_named(turn)) && !something_was_found(turn);
  if (leg_unknown && let_out && none_found && !vet_called(turn)) {
    firings.push_back(lame_leg_unknown(situation.language));
  }
  return firings;
}

}  // namespace evenclaw
