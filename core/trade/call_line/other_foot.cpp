#include "core/trade/call_line/other_foot.hpp"

#include <algorithm>
#include <string>
#include <utility>

#include "core/trade/call_line/said_again.hpp"
#include "core/trade/on_foot.hpp"

namespace evenclaw {

std::optional<Foot> other_foot_named(const TurnDraft& draft, const OtherFootNamed& said) {
  FootSet spoken_of;
  FootSet named_now;
  for (const Foot foot : all_feet) {
    if (!said.among.has(foot)) continue;
    const FootCall* call = find_foot(draft.turn, foot);
    if (call != nullptr) spoken_of.add(FootSet{foot});
    if (draft.feet_named.has(foot)) named_now.add(FootSet{foot});
  }
  const FootSet& first = spoken_of.count() == 1 ? spoken_of : named_now;
  if (first.count() != 1) return std::nullopt;
  for (const Foot foot : all_feet) {
    if (said.among.has(foot) && !first.has(foot)) return foot;
  }
  return std::nullopt;
}

namespace {

/// One foot is spoken of, and something was found on both its claws.
bool claws_may_be_meant(const TurnDraft& draft) {
  ClawPair found;
  for (const FootCall& call : draft.turn.feet) {
    if (!draft.feet_named.has(call.foot)) continue;
    for (const Finding& finding : call.findings) found.add(finding.claw);
  }
  return draft.feet_named.count() == 1 && found.both();
}

}  // namespace

std::optional<FootSet> both_feet_named(const TurnDraft& draft, const BothFeetNamed& said) {
  constexpr int two = 2;
  if (said.may_be_claws && claws_may_be_meant(draft)) return std::nullopt;
  if (draft.feet_named.count() == two) return draft.feet_named;
  FootSet spoken_of;
  for (const FootCall& call : draft.turn.feet) {
    if (call.state != FootState::not_lifted) spoken_of.add(call.foot);
  }
  return spoken_of.count() == two ? std::optional(spoken_of) : std::nullopt;
}

std::optional<FootSet> feet_meant(const TurnDraft& draft, const TurnClause& clause) {
  if (const auto* both = std::get_if<BothFeetNamed>(&clause)) return both_feet_named(draft, *both);
  const auto* other = std::get_if<OtherFootNamed>(&clause);
  const auto foot = other == nullptr ? std::nullopt : other_foot_named(draft, *other);
  return foot ? std::optional(FootSet{*foot}) : std::nullopt;
}

Outcome name_feet_meant(TurnDraft& draft, FootSet feet, const TurnClause& clause) {
  Outcome named = add_clause(draft, FeetNamed{feet});
  const bool as_both = std::holds_alternative<BothFeetNamed>(clause);
  if (named.ok() && as_both) draft.since_naming.push_back(clause);
  return named;
}

Refusal unclear_feet(const OtherFootNamed&) {
  return impossible("it is unclear which foot is the other one", "say the foot: {LH}, {RH}");
}

Refusal unclear_feet(const BothFeetNamed& said) {
  if (said.may_be_claws) {
    return impossible("it is unclear which two feet or claws are meant",
                      "of two claws say \"{both claws}\"; of two feet first which: "
                      "\"{both hinds}\" or \"{both fronts}\"");
  }
  return impossible("it is unclear which two feet are meant",
                    "say the feet first: \"{both hinds}\" or \"{both fronts}\"");
}

namespace {

/// Takes what was found and done on that foot as well off all others; a foot with nothing left on
/// it was not spoken of.
bool take_off_others(Turn& turn, const FootCall& only) {
  bool any = false;
  const auto is_there_too = [&only](const Finding& finding) {
    return std::any_of(only.findings.begin(), only.findings.end(),
                       [&](const Finding& each) { return are_one(each, finding); });
  };
  const auto is_done_too = [&only](const Action& act) {
    return std::find(only.actions.begin(), only.actions.end(), act) != only.actions.end();
  };
  for (FootCall& call : turn.feet) {
    if (call.foot == only.foot || std::erase_if(call.findings, is_there_too) == 0) continue;
    any = true;
    std::erase_if(call.actions, is_done_too);
    if (call.findings.empty()) call.state = FootState::unsaid;
  }
  std::erase_if(turn.feet, [&](const FootCall& call) {
    FootCall bare;
    bare.foot = call.foot;
    return any && call.foot != only.foot && call == bare;
  });
  return any;
}

}  // namespace

bool take_off_the_others(TurnDraft& draft, const FootCorrected& said) {
  if (!said.only || draft.feet_named != FootSet{said.foot}) return false;
  const FootCall* call = find_foot(draft.turn, said.foot);
  if (call == nullptr) return false;
  const FootCall only = *call;
  const bool any = take_off_others(draft.turn, only);
  (void)take_off_others(draft.before_naming, only);
  return any;
}

Refusal foot_is_what_was_said(const Turn& turn, Foot foot) {
  std::string message = std::string(word_of(foot)) + " is what was said";
  const auto other = std::find_if(turn.feet.begin(), turn.feet.end(), [foot](const FootCall& call) {
    return call.foot != foot && !call.findings.empty();
  });
  if (other == turn.feet.end()) return impossible(std::move(message));
  const std::string where(word_of(other->foot));
  return impossible(std::move(message), "if nothing was found on {" + where + "}, say \"{" + where +
                                            " nothing after all}\"");
}

}  // namespace evenclaw
