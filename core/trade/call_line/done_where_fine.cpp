#include "core/trade/call_line/done_where_fine.hpp"

#include <algorithm>
#include <string>
#include <vector>

#include "core/trade/call_line/act_facts.hpp"
#include "core/trade/call_line/offered.hpp"

namespace evenclaw {

namespace {

using A = ActionKind;

bool says_fine(const TurnClause& clause) {
  const auto* state = std::get_if<FootStateSaid>(&clause);
  const bool is_fine = state != nullptr && state->state == FootState::nothing_found;
  return is_fine || std::holds_alternative<NothingAfterAll>(clause);
}

bool leaves_as_called(const TurnClause& clause) {
  return says_fine(clause) || std::holds_alternative<BothFeetNamed>(clause);
}

/// Named again with what is done there, the foot is meant; "both" names none by itself.
bool was_fine_since_named(const TurnDraft& draft, const FootCall& call) {
  const std::vector<TurnClause>& since = draft.since_naming;
  return call.state == FootState::nothing_found &&
         std::any_of(since.begin(), since.end(), leaves_as_called);
}

/// Something was found on another foot, and nothing but "nothing found" is known of this one. What
/// carries a block or a wrap of last time is looked at again.
bool may_be_planned_elsewhere(const std::vector<Foot>& found, const FootCall& call) {
  return !found.empty() && call.actions.empty();
}

std::vector<Foot> feet_with_findings(const Turn& turn) {
  std::vector<Foot> feet;
  for (const FootCall& call : turn.feet) {
    if (!call.findings.empty()) feet.push_back(call.foot);
  }
  return feet;
}

/// A refusal puts what stands in braces in the words of the language that is spoken.
std::string in_any_language(std::optional<Foot> foot, const Action& action) {
  return "{" + offered_act(foot, action.kind, action.claw, english()) + "}";
}

}  // namespace

bool treats(ActionKind kind) {
  const bool is_of_last_time = kind == A::block_off || kind == A::block_refitted;
  if (is_of_last_time || kind == A::modelled) return false;
  return facts_of(kind).needs_lifting || kind == A::anaesthetised;
}

bool plans(ActionKind kind) {
  return kind == A::see_again || kind == A::vet || kind == A::vet_plan;
}

std::optional<Refusal> why_not_done(const TurnDraft& draft, const FootCall& call,
                                    const Action& said) {
  if (!was_fine_since_named(draft, call)) return std::nullopt;
  const std::vector<Foot> found = feet_with_findings(draft.turn);
  const bool is_asked_about =
      treats(said.kind) || (plans(said.kind) && may_be_planned_elsewhere(found, call));
  if (!is_asked_about) return std::nullopt;
  const std::string here = "\"" + in_any_language(call.foot, said) + "\"";
  std::string remedy = "say the foot with it: ";
  if (found.size() == 1) {
    remedy += "\"" + in_any_language(found.front(), said) + "\"; or, if it is meant, " + here;
  } else {
    remedy += here + ", if that one is meant";
  }
  return impossible("\"" + in_any_language(std::nullopt, said) + "\" would go to {" +
                        std::string(word_of(call.foot)) +
                        "}, of which \"{nothing found}\" was said",
                    remedy);
}

}  // namespace evenclaw
