#include "core/trade/checks/situation.hpp"

#include <algorithm>
#include <cstddef>

#include "core/trade/call_line/offered.hpp"
#include "core/trade/lesion.hpp"
#include "core/trade/spoken.hpp"

namespace evenclaw {

namespace {

// A warning has at most 90 characters.
constexpr std::size_t longest_name_in_a_warning = 25;

/// As "rest fine" leaves a foot that nobody spoke of.
bool is_only_fine(const FootCall& call) {
  return call.state == FootState::nothing_found && call.findings.empty() && call.actions.empty() &&
         call.measures.empty() && call.note.empty();
}

bool is_foot_said_last(const Turn& turn, Foot foot) {
  const auto said = std::find_if(turn.feet.rbegin(), turn.feet.rend(), [&](const FootCall& call) {
    return !(turn.rest_fine && is_only_fine(call));
  });
  return said != turn.feet.rend() && said->foot == foot;
}

std::string with_foot(const Situation& situation, Foot foot, Claw meant) {
  return std::string(situation.language.say(TermKind::foot, foot)) + ' ' +
         offered_correction(meant, situation.language);
}

/// "no, inside" of the foot said last; "LH no, inside" once others were spoken of.
std::string offered_claw(const Situation& situation, Foot foot, Claw meant) {
  if (!is_foot_said_last(situation.turn, foot)) return with_foot(situation, foot, meant);
  return offered_correction(meant, situation.language);
}

bool has_claw(Claw claw) {
  return claw != Claw::none;
}

}  // namespace

About about(Fixture fixture) {
  return fixture == Fixture::block ? About::block : About::wrap;
}

bool put_on_today(const FootCall& call, Fixture fixture) {
  return std::any_of(call.actions.begin(), call.actions.end(), [&](const Action& action) {
    const std::optional<FixtureSaid> said = fixture_said(action.kind);
    return said && said->fixture == fixture && said->step == FixtureStep::put_on;
  });
}

bool hurts(const Finding& finding) {
  switch (facts_of(finding.lesion).hurts) {
    case Hurts::no:
      return false;
    case Hurts::when_bad:
      return finding.degree == Degree::bad;
    case Hurts::yes:
      return true;
  }
  return false;
}

const Finding* painful_finding(const FootCall& call, Claw claw) {
  const auto found =
      std::find_if(call.findings.begin(), call.findings.end(), [&](const Finding& finding) {
        return hurts(finding) && (finding.claw == claw || finding.claw == Claw::both);
      });
  return found == call.findings.end() ? nullptr : &*found;
}

ClawPair missing_claws(const Situation& situation, const FootCall& call) {
  ClawPair claws = missing_before(situation.past.rows, call.foot);
  for (const Action& action : call.actions) {
    if (action.kind == ActionKind::claw_missing) claws.add(action.claw);
  }
  return claws;
}

bool vet_called(const Turn& turn) {
  return was_called(turn, ActionKind::vet);
}

/// What he was only asked for, as pain relief, he need not know of.
bool is_on_the_vets_word(const Action& action) {
  if (action.kind == ActionKind::pain_relief_asked) return false;
  return action.by_whom == ByWhom::vet || action.directed_by == ByWhom::vet;
}

bool vet_had_a_hand_in(const FootCall& call) {
  return std::any_of(call.actions.begin(), call.actions.end(), is_on_the_vets_word);
}

std::vector<std::string> vet_or_go_ahead(std::optional<Foot> foot, const Language& language) {
  return {offered_act(foot, ActionKind::vet, Claw::none, language), offered_go_ahead(language)};
}

std::string spoken_where(Foot foot, Claw claw) {
  std::string where(spoken(foot));
  if (is_called(claw)) where += ' ' + std::string(spoken(claw));
  return where;
}

std::string spoken_name(const Finding& finding) {
  if (is_named_by_words(finding.lesion) && !finding.words.empty()) return finding.words;
  const LesionFacts& facts = facts_of(finding.lesion);
  const bool fits = facts.name.size() <= longest_name_in_a_warning;
  return std::string(fits ? facts.name : facts_of(facts.parent).name);
}

std::vector<std::string> foot_correction(const Situation& situation, Foot said, Foot meant) {
  if (!is_foot_said_last(situation.turn, said)) return {};
  return {offered_correction(meant, situation.language)};
}

std::vector<std::string> claw_correction(const Situation& situation, const FootCall& call,
                                         const Action& said, Claw meant) {
  const auto last = std::find_if(call.actions.rbegin(), call.actions.rend(),
                                 [](const Action& action) { return has_claw(action.claw); });
  const bool is_last = last != call.actions.rend() && *last == said && call.measures.empty();
  if (!is_last) return {};
  // "LH no, inside" mends what was done there, whatever was found behind it.
  if (situation.past.is_finding_last) return {with_foot(situation, call.foot, meant)};
  return {offered_claw(situation, call.foot, meant)};
}

std::vector<std::string> claw_correction(const Situation& situation, const FootCall& call,
                                         const Finding& said, Claw meant) {
  const bool act_has_claw =
      std::any_of(call.actions.begin(), call.actions.end(), [](const Action& action) {
        // That a claw is missing is known, and mended by nothing.
        return has_claw(action.claw) && action.kind != ActionKind::claw_missing;
      });
  const auto last = std::find_if(call.findings.rbegin(), call.findings.rend(),
                                 [](const Finding& finding) { return has_claw(finding.claw); });
  const bool is_last = last != call.findings.rend() && *last == said && call.measures.empty();
  if (!is_last || act_has_claw) return {};
  return {offered_claw(situation, call.foot, meant)};
}

}  // namespace evenclaw
