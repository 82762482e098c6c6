// A cow that came lame must not leave with nothing found on the lame leg and nobody having looked
// higher, nor with one hind foot on the ground all the time.
#include <algorithm>
#include <optional>

#include "core/trade/call_line/act_facts.hpp"
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

/// Something was found on one other foot and on no more: then that may be the leg that was meant.
std::optional<Foot> leg_meant_perhaps(const Turn& turn) {
  std::optional<Foot> meant;
  for (const FootCall& call : turn.feet) {
    if (call.findings.empty()) continue;
    if (meant) return std::nullopt;
    meant = call.foot;
  }
  return meant && !turn.lame.has(*meant) ? meant : std::nullopt;
}

Firing lame_on(Foot foot, std::string_view what, const Situation& situation) {
  const Language& language = situation.language;
  Firing firing;
  firing.warning.foot = foot;
  firing.warning.words = "Came lame " + std::string(spoken(foot)) + std::string(what);
  firing.warning.answers = vet_or_go_ahead(foot, language);
  if (const std::optional<Foot> other = leg_meant_perhaps(situation.turn)) {
    FootSet lame = situation.turn.lame;
    lame.remove(foot);
    lame.add(*other);
    firing.warning.answers.insert(firing.warning.answers.end() - 1, offered_lame(lame, language));
  }
  firing.causes = {{foot, About::finding}};
  return firing;
}

/// Blisters, pus and bare bone called of a foot are found on it.
bool something_was_found(const Turn& turn) {
  return std::any_of(turn.feet.begin(), turn.feet.end(), [](const FootCall& call) {
    return !call.findings.empty() ||
           std::any_of(call.actions.begin(), call.actions.end(),
                       [](const Action& action) { return is_found_on_foot(action.kind); });
  });
}

bool some_foot_found_fine(const Turn& turn) {
  return std::any_of(all_feet.begin(), all_feet.end(),
                     [&](Foot foot) { return nothing_found_on(turn, foot); });
}

bool feet_only_named(const Turn& turn) {
  return !turn.feet.empty() && std::all_of(turn.feet.begin(), turn.feet.end(), only_named);
}

constexpr std::string_view look_higher = ", nothing found: look again, look higher, or vet.";
constexpr std::string_view lift_it = ", and that foot was not lifted: lift it, or vet.";
constexpr std::string_view compare = ", no cause found: compare the other leg, think higher up.";

/// She comes again, or somebody looks how she walks.
bool has_plan(const std::vector<Action>& actions) {
  return std::any_of(actions.begin(), actions.end(), [](const Action& action) {
    return action.kind == ActionKind::see_again || action.kind == ActionKind::watch_her_walk;
  });
}

bool has_plan_for(const Turn& turn, Foot foot) {
  const FootCall* call = find_foot(turn, foot);
  return has_plan(turn.actions) || (call != nullptr && has_plan(call->actions));
}

bool vet_called_for(const Turn& turn, Foot foot) {
  const FootCall* call = find_foot(turn, foot);
  return has_vet(turn.actions) || (call != nullptr && has_vet(call->actions));
}

/// The lame legs on which nothing was found, and for which the vet was not called.
FootSet lame_and_fine(const Turn& turn) {
  FootSet feet;
  for (const Foot foot : all_feet) {
    const bool lame = turn.lame.has(foot) && !vet_called_for(turn, foot);
    if (lame && nothing_found_on(turn, foot)) feet.add(foot);
  }
  return feet;
}

bool is_let_out(const Situation& situation) {
  return situation.finished && situation.turn.end == TurnEnd::done;
}

/// She came lame, nobody said on which leg, and nothing was found on any foot. Of a cow that can
/// hardly walk the check of the worst score says the same, and why it is worse.
bool lame_somewhere_and_fine(const Situation& situation) {
  const Turn& turn = situation.turn;
  const bool leg_unknown = came_for(turn, Reason::lame) && turn.lame.empty();
  const bool none_found =
      (some_foot_found_fine(turn) || feet_only_named(turn)) && !something_was_found(turn);
  return leg_unknown && none_found && is_let_out(situation) && !vet_called(turn) &&
         !walks_worst(situation);
}

bool has_any_plan(const Turn& turn) {
  return was_called(turn, ActionKind::see_again) || was_called(turn, ActionKind::watch_her_walk);
}

Firing lame_leg_unknown(std::string_view words, const Language& language) {
  Firing firing;
  firing.warning.words = std::string(words);
  firing.warning.answers = vet_or_go_ahead(std::nullopt, language);
  for (const Foot foot : all_feet) firing.causes.push_back({foot, About::finding});
  return firing;
}

/// Said to have stayed on the ground; of a foot that nobody named nothing is known.
bool stayed_down(const Situation& situation, Foot foot) {
  const FootCall* call = find_foot(situation.turn, foot);
  const std::vector<TurnRow>& before = situation.past.same_visit;
  const bool lifted_before = std::any_of(
      before.begin(), before.end(), [foot](const TurnRow& row) { return row.lifted.has(foot); });
  return call != nullptr && call->state == FootState::not_lifted && !lifted_before;
}

bool lame_behind_or_unknown(const Turn& turn) {
  return came_for(turn, Reason::lame) &&
         (turn.lame.empty() || turn.lame.has(Foot::lh) || turn.lame.has(Foot::rh));
}

}  // namespace

std::vector<Firing> lame_nothing_found(const Situation& situation) {
  const Turn& turn = situation.turn;
  const FootSet fine = lame_and_fine(turn);
  std::vector<Firing> firings;
  for (const Foot foot : all_feet) {
    if (!turn.lame.has(foot) || vet_called_for(turn, foot)) continue;
    if (fine.has(foot) && !has_plan_for(turn, foot)) {
      firings.push_back(lame_on(foot, look_higher, situation));
    } else if (is_let_out(situation) && not_looked_at(turn, foot)) {
      firings.push_back(lame_on(foot, lift_it, situation));
    }
  }
  if (lame_somewhere_and_fine(situation) && !has_any_plan(turn)) {
    const std::string_view found =
        some_foot_found_fine(turn) ? "nothing found" : "and nobody said what was found";
    firings.push_back(lame_leg_unknown(
        "Came lame, " + std::string(found) + ": look at all four, look higher, or vet.",
        situation.language));
  }
  return firings;
}

std::vector<Firing> lame_cause_not_found(const Situation& situation) {
  const Turn& turn = situation.turn;
  const FootSet fine = lame_and_fine(turn);
  std::vector<Firing> firings;
  for (const Foot foot : all_feet) {
    if (!fine.has(foot) || !has_plan_for(turn, foot)) continue;
    firings.push_back(lame_on(foot, compare, situation));
  }
  if (lame_somewhere_and_fine(situation) && has_any_plan(turn)) {
    firings.push_back(lame_leg_unknown(
        "Came lame, no cause found: look at all four, think higher up.", situation.language));
  }
  return firings;
}

std::vector<Firing> one_hind_lifted(const Situation& situation) {
  const Turn& turn = situation.turn;
  std::vector<Firing> firings;
  if (!lame_behind_or_unknown(turn) || turn.end != TurnEnd::done) return firings;
  for (const Foot foot : {Foot::lh, Foot::rh}) {
    const FootCall* other = find_foot(turn, other_side(foot));
    if (!stayed_down(situation, foot) || other == nullptr || !was_lifted(*other)) continue;
    Firing firing;
    firing.warning.foot = foot;
    firing.warning.words = "Lame, and " + std::string(spoken(foot)) +
                           " was not lifted: look at both hinds, both may hurt.";
    firing.warning.answers = {offered_go_ahead(situation.language)};
    firing.causes = {{foot, About::finding}};
    firings.push_back(std::move(firing));
  }
  return firings;
}

}  // namespace evenclaw
