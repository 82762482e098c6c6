#include "core/trade/second_failure.hpp"

#include <algorithm>

#include "core/trade/lesion.hpp"
#include "core/trade/on_foot.hpp"

namespace evenclaw {

namespace {

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

bool is_same_place(const CaseRow& known, Foot foot, const Finding& finding) {
  const bool places_differ = known.place != Place::not_called &&
                             finding.place != Place::not_called && known.place != finding.place;
  return !known.not_found_on && known.foot == foot && !places_differ &&
         known.family == facts_of(finding.lesion).family && claws_agree(known.claw, finding.claw);
}

/// The finding goes on with an open case, and today is at least its third visit.
bool is_long_case(const Rows& past, Foot foot, const Finding& finding, Day today) {
  return std::any_of(past.cases.begin(), past.cases.end(), [&](const CaseRow& known) {
    const int visits = known.times_found + (known.last_day == today ? 0 : 1);
    return visits >= visits_until_asked && is_same_place(known, foot, finding);
  });
}

}  // namespace

const Action* blocked_again_on(const FootCall& call) {
  const auto found =
      std::find_if(call.actions.begin(), call.actions.end(),
                   [](const Action& action) { return action.kind == ActionKind::block_again; });
  return found == call.actions.end() ? nullptr : &*found;
}

std::optional<Day> blocked_again_before(const Rows& past, Foot foot, Claw claw, Day today) {
  std::optional<Day> latest;
  for (const ActionRow& row : past.actions) {
    const int days = today - row.day;
    const bool meant = row.action == ActionKind::block_again && row.foot == foot &&
                       claws_agree(row.claw, claw) && days > 0 && days <= same_story_days;
    if (meant) latest = latest ? std::max(*latest, row.day) : row.day;
  }
  return latest;
}

const Finding* found_at_third_visit(const Rows& past, const FootCall& call, Day today) {
  const auto found =
      std::find_if(call.findings.begin(), call.findings.end(), [&](const Finding& finding) {
        return should_have_healed(finding) && is_long_case(past, call.foot, finding, today);
      });
  return found == call.findings.end() ? nullptr : &*found;
}

bool fails_again(const Rows& past, const FootCall& call, Day today) {
  const Action* again = blocked_again_on(call);
  const bool blocked_twice =
      again != nullptr && blocked_again_before(past, call.foot, again->claw, today).has_value();
  return blocked_twice || found_at_third_visit(past, call, today) != nullptr;
}

}  // namespace evenclaw
