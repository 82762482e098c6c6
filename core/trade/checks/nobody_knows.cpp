// A wrap or block told of in the crush that is on no record of hers: another cow may be meant, or
// another foot.
#include <algorithm>
#include <optional>
#include <string>
#include <utility>

#include "core/trade/call_line/offered.hpp"
#include "core/trade/checks/situation.hpp"
#include "core/trade/follow_up_rules.hpp"
#include "core/trade/on_foot.hpp"
#include "core/trade/spoken.hpp"

namespace evenclaw {

namespace {

/// She was called at a visit before this one.
bool was_seen_before(const CowPast& past) {
  return past.rows.turns.size() > past.same_visit.size();
}

/// The vet may have put it on since.
bool vet_was_called(const CowPast& past) {
  const std::vector<ActionRow>& acts = past.rows.actions;
  return std::any_of(acts.begin(), acts.end(),
                     [](const ActionRow& row) { return row.action == ActionKind::vet; });
}

bool needs_one_from_before(FixtureStep step) {
  return is_off_after(step) || step == FixtureStep::renewed;
}

std::optional<Firing> asked_about(const Action& action, const FootCall& call,
                                  const Situation& situation) {
  const std::optional<FixtureSaid> said = fixture_said(action.kind);
  if (!said || !needs_one_from_before(said->step)) return std::nullopt;
  if (put_on_today(call, said->fixture)) return std::nullopt;
  const Rows& past = situation.past.rows;
  if (is_known_on(past, call.foot, said->fixture, situation.today)) return std::nullopt;
  if (is_one_somewhere(said->fixture, past)) return std::nullopt;
  if (vet_was_called(situation.past)) return std::nullopt;
  // What is on the other foot is asked about there, unless that one was told of by itself.
  const Foot other = other_side(call.foot);
  const bool is_on_other = !fixtures_left(past, other, said->fixture).empty();
  const FootCall* there = find_foot(situation.turn, other);
  if (is_on_other && (there == nullptr || !speaks_of(*there, said->fixture))) return std::nullopt;
  Firing firing;
  firing.warning.foot = call.foot;
  firing.warning.words =
      "No " + std::string(name_of(said->fixture)) + " is known on her " +
      std::string(spoken(call.foot)) +
      (is_on_other ? ", only on " + std::string(spoken(other)) + ". Was one there?"
                   : ". Was it another cow?");
  firing.warning.answers = {
      offered_taking_back(call.foot, action.kind, action.claw, situation.language),
      offered_go_ahead(situation.language)};
  firing.causes = {{call.foot, about(said->fixture)}};
  return firing;
}

}  // namespace

std::vector<Firing> fixture_nobody_knows(const Situation& situation) {
  std::vector<Firing> firings;
  if (!was_seen_before(situation.past)) return firings;
  for (const FootCall& call : situation.turn.feet) {
    for (const Action& action : call.actions) {
      std::optional<Firing> firing = asked_about(action, call, situation);
      if (firing) firings.push_back(*std::move(firing));
    }
  }
  return firings;
}

}  // namespace evenclaw
