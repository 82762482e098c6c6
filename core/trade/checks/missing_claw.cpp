// A block, a finding of the horn or a measure called on a claw that is known to be missing.
#include <utility>

#include "core/trade/call_line/offered.hpp"
#include "core/trade/call_line/possible.hpp"
#include "core/trade/checks/situation.hpp"
#include "core/trade/spoken.hpp"

namespace evenclaw {

namespace {

/// The missing claw that is meant; `not_called` when it is none.
Claw missing_among(const ClawPair& missing, Claw said) {
  ClawPair meant;
  meant.add(said);
  if (!missing.outside) meant.remove(Claw::outside);
  if (!missing.inside) meant.remove(Claw::inside);
  return meant.claw();
}

Firing asked(const FootCall& call, Claw claw, const std::string& what, About cause) {
  Firing firing;
  firing.warning.foot = call.foot;
  firing.warning.claw = claw;
  firing.warning.words = sentence(std::string(spoken(call.foot))) + ": " + what + " on the " +
                         std::string(spoken(claw)) + " claw, which is missing. Which claw?";
  firing.causes = {{call.foot, cause}};
  return firing;
}

void with_correction(Firing& firing, bool other_is_there, std::vector<std::string> correction,
                     const Language& language) {
  if (other_is_there) firing.warning.answers = std::move(correction);
  firing.warning.answers.push_back(offered_go_ahead(language));
}

/// What is on the foot after the act; a block told to be off the stump is no slip.
bool leaves_a_block(const Action& action) {
  const std::optional<FixtureSaid> said = fixture_said(action.kind);
  return said && said->fixture == Fixture::block && is_on_after(said->step);
}

void ask_about_blocks(std::vector<Firing>& firings, const Situation& situation,
                      const FootCall& call, const ClawPair& missing) {
  for (const Action& action : call.actions) {
    const Claw claw = missing_among(missing, action.claw);
    if (!leaves_a_block(action) || !is_called(claw)) continue;
    Firing firing = asked(call, claw, "block", About::block);
    with_correction(firing, !missing.both(),
                    claw_correction(situation, call, action, partner(claw)), situation.language);
    firings.push_back(std::move(firing));
  }
}

/// Skin, swellings and injuries may be found on a stump.
void ask_about_findings(std::vector<Firing>& firings, const Situation& situation,
                        const FootCall& call, const ClawPair& missing) {
  for (const Finding& finding : call.findings) {
    const Claw claw = missing_among(missing, finding.claw);
    const bool is_of_horn = facts_of(finding.lesion).group == LesionGroup::horn;
    if (!is_of_horn || !is_called(claw)) continue;
    Firing firing = asked(call, claw, spoken_name(finding), About::finding);
    with_correction(firing, !missing.both(),
                    claw_correction(situation, call, finding, partner(claw)), situation.language);
    firings.push_back(std::move(firing));
  }
}

void ask_about_measures(std::vector<Firing>& firings, const Situation& situation,
                        const FootCall& call, const ClawPair& missing) {
  for (const Measure& measure : call.measures) {
    const Claw claw = missing_among(missing, measure.claw);
    if (!is_called(claw)) continue;
    Firing firing = asked(call, claw, to_text(measure.length), About::measure);
    with_correction(firing, false, {}, situation.language);
    firings.push_back(std::move(firing));
  }
}

/// It was taken off or is not there, and nobody said which: known from before it need not be said.
bool lacks_its_claw(const Action& action, const ClawPair& missing) {
  if (is_called(action.claw)) return false;
  return action.kind == ActionKind::amputated ||
         (action.kind == ActionKind::claw_missing && missing.none());
}

void ask_which_is_missing(std::vector<Firing>& firings, const Situation& situation,
                          const FootCall& call, const ClawPair& missing) {
  for (const Action& action : call.actions) {
    if (!lacks_its_claw(action, missing)) continue;
    const std::string act = offered_act({}, action.kind, Claw::none, situation.language);
    Firing firing;
    firing.warning.foot = call.foot;
    firing.warning.claw = Claw::not_called;
    firing.warning.words = sentence(std::string(spoken(call.foot))) + ": " + act + ", which claw?";
    for (const Claw claw : {Claw::outside, Claw::inside}) {
      if (missing.has(claw)) continue;
      firing.warning.answers.push_back(
          offered_act(call.foot, action.kind, claw, situation.language));
    }
    firing.warning.answers.push_back(offered_go_ahead(situation.language));
    firing.causes = {{call.foot, About::finding}};
    firings.push_back(std::move(firing));
  }
}

}  // namespace

std::vector<Firing> claw_that_is_missing(const Situation& situation) {
  std::vector<Firing> firings;
  for (const FootCall& call : situation.turn.feet) {
    const ClawPair missing = missing_claws(situation, call);
    ask_which_is_missing(firings, situation, call, missing);
    if (missing.none()) continue;
    ask_about_blocks(firings, situation, call, missing);
    ask_about_findings(firings, situation, call, missing);
    ask_about_measures(firings, situation, call, missing);
  }
  return firings;
}

}  // namespace evenclaw
