// Left and right, outside and inside are the words most easily mixed up. What is called today is
// held against the open painful cases and the blocks and wraps that are still on.
#include <algorithm>
#include <optional>
#include <utility>

#include "core/trade/call_line/offered.hpp"
#include "core/trade/checks/situation.hpp"
#include "core/trade/lesion.hpp"
#include "core/trade/spoken.hpp"

namespace evenclaw {

namespace {

/// Our judgement: a horn lesion that nobody has seen for four months has grown out or been lost
/// sight of, and the same lesion on the other foot is then news, not a slip of the tongue.
constexpr int case_is_fresh_days = 120;

/// Only lesions that sit on one claw and hurt. Blood in the sole, worn soles and whatever infects
/// skin are found on both hind feet too often.
bool stays_on_its_claw(Lesion lesion) {
  const LesionFacts& facts = facts_of(lesion);
  return facts.group == LesionGroup::horn && facts.hurts == Hurts::yes && lesion != Lesion::ts;
}

bool is_usual(Lesion lesion, Place place) {
  const std::span<const Place> usual = facts_of(lesion).usual_places;
  return usual.empty() || std::find(usual.begin(), usual.end(), place) != usual.end();
}

/// The same place, or one not called that may well be the same. Heel ulcer and toe ulcer are both
/// ulcers and yet never each other.
bool places_agree(const CaseRow& known, const Finding& finding) {
  if (known.place != Place::not_called && finding.place != Place::not_called) {
    return known.place == finding.place;
  }
  if (finding.place != Place::not_called) return is_usual(known.lesion, finding.place);
  if (known.place != Place::not_called) return is_usual(finding.lesion, known.place);
  const std::span<const Place> usual = facts_of(known.lesion).usual_places;
  return std::any_of(usual.begin(), usual.end(),
                     [&](Place place) { return is_usual(finding.lesion, place); });
}

/// Cases of horn that hurts, open, found before today and not too long ago.
std::vector<CaseRow> fresh_cases(const Situation& situation, Foot foot) {
  std::vector<CaseRow> cases;
  for (const CaseRow& known : situation.past.rows.cases) {
    const int days = situation.today - known.last_day;
    const bool fresh = days > 0 && days <= case_is_fresh_days && !known.not_found_on;
    if (fresh && known.foot == foot && stays_on_its_claw(known.lesion)) cases.push_back(known);
  }
  return cases;
}

const CaseRow* first_case(const std::vector<CaseRow>& cases, auto&& is_wanted) {
  const auto found = std::find_if(cases.begin(), cases.end(), is_wanted);
  return found == cases.end() ? nullptr : &*found;
}

bool has_own_words(const Turn& turn, Foot foot) {
  const FootCall* call = find_foot(turn, foot);
  return call != nullptr && (!call->findings.empty() || !call->actions.empty());
}

/// The other foot has nothing of its own, and no more words for it are to come.
bool other_foot_is_idle(const Situation& situation, Foot other) {
  const FootCall* call = find_foot(situation.turn, other);
  const bool settled_already = call != nullptr && (call->state == FootState::not_lifted ||
                                                   call->state == FootState::nothing_found);
  return !has_own_words(situation.turn, other) && (situation.finished || settled_already);
}

std::string case_of(const CaseRow& known) {
  return "The " + std::string(facts_of(known.lesion).name) + " of " + spoken(known.last_day);
}

Firing other_foot_meant(const Situation& situation, Foot said, std::string what, About about) {
  const Foot other = other_side(said);
  Firing firing;
  firing.warning.foot = said;
  firing.warning.words = std::move(what) + ". " + sentence(std::string(spoken(other))) + " meant?";
  firing.warning.answers = foot_correction(situation, said, other);
  firing.warning.answers.push_back(offered_go_ahead(situation.language));
  firing.causes = {{said, about}, {other, about}};
  return firing;
}

/// `said` is the finding or the act whose claw is in doubt.
template <class Said>
Firing other_claw_meant(const Situation& situation, const FootCall& call, const Said& said,
                        std::string what) {
  const Claw meant = partner(said.claw);
  Firing firing;
  firing.warning.foot = call.foot;
  firing.warning.claw = said.claw;
  firing.warning.words = std::move(what) + ". " + sentence(std::string(spoken(meant))) + " meant?";
  firing.warning.answers = claw_correction(situation, call, said, meant);
  firing.warning.answers.push_back(offered_go_ahead(situation.language));
  // A finding called on the wrong claw is what makes the block look wrong, too.
  firing.causes = {{call.foot, About::finding}, {call.foot, About::block}};
  return firing;
}

bool found_today_on(const FootCall& call, Lesion family, Claw claw) {
  return std::any_of(call.findings.begin(), call.findings.end(), [&](const Finding& finding) {
    return facts_of(finding.lesion).family == family && claws_agree(finding.claw, claw);
  });
}

/// The lesion was known on the claw called today, be it in a milder form: nothing is swapped.
bool is_known_here(const Situation& situation, Foot foot, const Finding& finding) {
  const std::vector<CaseRow>& cases = situation.past.rows.cases;
  return std::any_of(cases.begin(), cases.end(), [&](const CaseRow& known) {
    return !known.not_found_on && known.foot == foot &&
           known.family == facts_of(finding.lesion).family && claws_agree(known.claw, finding.claw);
  });
}

std::optional<Firing> finding_on_other_claw(const Situation& situation, const FootCall& call,
                                            const Finding& finding) {
  const Lesion family = facts_of(finding.lesion).family;
  const std::vector<CaseRow> here = fresh_cases(situation, call.foot);
  const CaseRow* known = first_case(here, [&](const CaseRow& row) {
    return row.family == family && places_agree(row, finding) &&
           !found_today_on(call, family, row.claw);
  });
  if (known == nullptr) return std::nullopt;
  const std::string what = case_of(*known) + " was " + std::string(spoken(known->claw)) + ", " +
                           std::string(spoken(call.foot));
  return other_claw_meant(situation, call, finding, what);
}

std::optional<Firing> finding_on_other_foot(const Situation& situation, const FootCall& call,
                                            const Finding& finding) {
  const Lesion family = facts_of(finding.lesion).family;
  const std::vector<CaseRow> here = fresh_cases(situation, call.foot);
  const Foot other = other_side(call.foot);
  const bool known_here =
      first_case(here, [&](const CaseRow& row) { return row.family == family; }) != nullptr;
  if (known_here || !other_foot_is_idle(situation, other)) return std::nullopt;
  const std::vector<CaseRow> there = fresh_cases(situation, other);
  const CaseRow* known = first_case(there, [&](const CaseRow& row) {
    return row.family == family && places_agree(row, finding) &&
           claws_agree(row.claw, finding.claw);
  });
  if (known == nullptr) return std::nullopt;
  return other_foot_meant(situation, call.foot,
                          case_of(*known) + " was on " + std::string(spoken(other)),
                          About::finding);
}

std::optional<Firing> finding_swapped(const Situation& situation, const FootCall& call,
                                      const Finding& finding) {
  if (!stays_on_its_claw(finding.lesion) || is_known_here(situation, call.foot, finding)) {
    return std::nullopt;
  }
  std::optional<Firing> firing = finding_on_other_claw(situation, call, finding);
  return firing ? firing : finding_on_other_foot(situation, call, finding);
}

/// An act that only makes sense on a fixture that is there already.
bool needs_fixture(FixtureStep step) {
  return step != FixtureStep::put_on;
}

std::string fixture_of(const OnFootRow& row) {
  return "The " + std::string(name_of(row.fixture)) + " of " + spoken(row.since);
}

std::optional<Firing> act_on_absent_fixture(const Situation& situation, const FootCall& call,
                                            const Action& action) {
  const std::optional<FixtureSaid> said = fixture_said(action.kind);
  if (!said || !needs_fixture(said->step) || put_on_today(call, said->fixture)) {
    return std::nullopt;
  }
  const Rows& past = situation.past.rows;
  const std::vector<OnFootRow> here = fixtures_left(past, call.foot, said->fixture);
  if (here.empty()) {
    const Foot other = other_side(call.foot);
    const std::vector<OnFootRow> there = fixtures_left(past, other, said->fixture);
    const FootCall* other_call = find_foot(situation.turn, other);
    if (there.empty() || (other_call != nullptr && speaks_of(*other_call, said->fixture))) {
      return std::nullopt;
    }
    return other_foot_meant(situation, call.foot,
                            fixture_of(there.front()) + " is on " + std::string(spoken(other)),
                            about(said->fixture));
  }
  const bool fits = std::any_of(here.begin(), here.end(), [&](const OnFootRow& row) {
    return claws_agree(row.claw, action.claw);
  });
  if (fits) return std::nullopt;
  const OnFootRow& row = here.front();
  return other_claw_meant(situation, call, action,
                          fixture_of(row) + " is " + std::string(spoken(row.claw)) + ", " +
                              std::string(spoken(call.foot)));
}

/// A new block without a finding is held against the open cases: it goes beside the sick claw.
std::optional<Firing> block_against_case(const Situation& situation, const FootCall& call,
                                         const Action& action) {
  const bool puts_on =
      action.kind == ActionKind::block_on || action.kind == ActionKind::block_again;
  if (!puts_on || !call.findings.empty()) return std::nullopt;
  const std::vector<CaseRow> here = fresh_cases(situation, call.foot);
  const CaseRow* under_block = first_case(here, [&](const CaseRow& known) {
    return known.claw == action.claw && is_called(known.claw) && known.claw != Claw::both;
  });
  const CaseRow* beside =
      first_case(here, [&](const CaseRow& known) { return known.claw == partner(action.claw); });
  if (under_block != nullptr && beside == nullptr) {
    return other_claw_meant(situation, call, action,
                            case_of(*under_block) + " was " +
                                std::string(spoken(under_block->claw)) + ", where the block goes");
  }
  const Foot other = other_side(call.foot);
  const std::vector<CaseRow> there = fresh_cases(situation, other);
  if (!here.empty() || there.empty() || !other_foot_is_idle(situation, other) ||
      !fixtures_left(situation.past.rows, call.foot, Fixture::block).empty()) {
    return std::nullopt;
  }
  return other_foot_meant(situation, call.foot,
                          case_of(there.front()) + " was on " + std::string(spoken(other)),
                          About::block);
}

void add(std::vector<Firing>& firings, std::optional<Firing> firing) {
  if (firing) firings.push_back(std::move(*firing));
}

}  // namespace

std::vector<Firing> side_or_claw_swapped(const Situation& situation) {
  std::vector<Firing> firings;
  for (const FootCall& call : situation.turn.feet) {
    std::vector<Firing> of_foot;
    for (const Finding& finding : call.findings) {
      add(of_foot, finding_swapped(situation, call, finding));
    }
    for (const Action& action : call.actions) {
      add(of_foot, act_on_absent_fixture(situation, call, action));
      add(of_foot, block_against_case(situation, call, action));
    }
    // The same slip shows in all that was said of the foot: ask once.
    if (!of_foot.empty()) firings.push_back(std::move(of_foot.front()));
  }
  return firings;
}

}  // namespace evenclaw
