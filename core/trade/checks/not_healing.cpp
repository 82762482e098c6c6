// A lesion that does not heal: found at a third visit, blocked again and again.
#include <algorithm>
#include <optional>
#include <utility>

#include "core/trade/call_line/offered.hpp"
#include "core/trade/checks/situation.hpp"
#include "core/trade/spoken.hpp"

namespace evenclaw {

namespace {

/// Our judgement: a block of half a year ago was for another story.
constexpr int same_story_days = 120;
constexpr int visits_until_asked = 3;

/// Horn that is broken through or come apart. Blood in the sole and thin soles are found at every
/// visit of many cows; what was called slight is on its way out.
bool should_have_healed(const Finding& finding) {
  const LesionFacts& facts = facts_of(finding.lesion);
  const bool only_blood = facts.family == Lesion::u && facts.rung == 1;
  return facts.group == LesionGroup::horn && finding.lesion != Lesion::ts && !only_blood &&
         finding.degree != Degree::slight;
}

bool is_same_place(const CaseRow& known, const FootCall& call, const Finding& finding) {
  const bool places_differ = known.place != Place::not_called &&
                             finding.place != Place::not_called && known.place != finding.place;
  return !known.not_found_on && known.foot == call.foot && !places_differ &&
         known.family == facts_of(finding.lesion).family && claws_agree(known.claw, finding.claw);
}

/// The open case the finding goes on with, when today is at least its third visit.
const CaseRow* long_case(const Situation& situation, const FootCall& call, const Finding& finding) {
  const std::vector<CaseRow>& cases = situation.past.rows.cases;
  const auto found = std::find_if(cases.begin(), cases.end(), [&](const CaseRow& known) {
    const bool counts_today = known.last_day == situation.today;
    const int visits = known.times_found + (counts_today ? 0 : 1);
    return visits >= visits_until_asked && is_same_place(known, call, finding);
  });
  return found == cases.end() ? nullptr : &*found;
}

std::optional<Firing> asked_about_case(const Situation& situation, const FootCall& call) {
  for (const Finding& finding : call.findings) {
    if (!should_have_healed(finding)) continue;
    const CaseRow* known = long_case(situation, call, finding);
    if (known == nullptr) continue;
    Firing firing;
    firing.warning.foot = call.foot;
    firing.warning.claw = finding.claw;
    firing.warning.words = "Third visit or more with the " + spoken_name(finding) + " (" +
                           spoken_where(call.foot, finding.claw) + "): vet?";
    firing.warning.answers = vet_or_go_ahead(call.foot, situation.language);
    firing.causes = {{call.foot, About::not_healing}};
    return firing;
  }
  return std::nullopt;
}

const Action* blocked_again_on(const FootCall& call) {
  const auto found =
      std::find_if(call.actions.begin(), call.actions.end(),
                   [](const Action& action) { return action.kind == ActionKind::block_again; });
  return found == call.actions.end() ? nullptr : &*found;
}

/// The last day before today on which that claw was blocked again because it had not healed.
std::optional<Day> blocked_again_before(const Situation& situation, Foot foot, Claw claw) {
  std::optional<Day> latest;
  for (const ActionRow& row : situation.past.rows.actions) {
    const int days = situation.today - row.day;
    const bool meant = row.action == ActionKind::block_again && row.foot == foot &&
                       claws_agree(row.claw, claw) && days > 0 && days <= same_story_days;
    if (meant) latest = latest ? std::max(*latest, row.day) : row.day;
  }
  return latest;
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
    const std::optional<Day> before = blocked_again_before(situation, call.foot, again->claw);
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
