#include "core/trade/call_line/not_done.hpp"

#include <variant>

#include "core/trade/call_line/act_facts.hpp"

namespace evenclaw {

namespace {

bool is_of_a_lifted_foot(const TurnClause& clause) {
  if (const auto* act = std::get_if<ActionSaid>(&clause)) {
    return !act->whole_cow && facts_of(act->action.kind).needs_lifting;
  }
  if (const auto* foot = std::get_if<FootStateSaid>(&clause)) {
    return foot->state == FootState::nothing_found;
  }
  if (const auto* claws = std::get_if<TrimmedSaid>(&clause)) return claws->trimmed == Trimmed::yes;
  return std::holds_alternative<FindingSaid>(clause) ||
         std::holds_alternative<MeasureSaid>(clause) ||
         std::holds_alternative<RestFineSaid>(clause);
}

}  // namespace

std::optional<Refusal> why_not_behind_not_done(const Turn& turn, const TurnClause& clause) {
  if (turn.end != TurnEnd::not_done || !is_of_a_lifted_foot(clause)) return std::nullopt;
  return impossible("she was said not to be done",
                    "if she was done after all, say \"{done}\", then her number and what holds");
}

}  // namespace evenclaw
