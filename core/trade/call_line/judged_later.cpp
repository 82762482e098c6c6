#include "core/trade/call_line/judged_later.hpp"

#include <variant>

#include "core/trade/call_line/act_facts.hpp"
#include "core/trade/call_line/nothing_found.hpp"

namespace evenclaw {

bool may_mend_an_earlier_turn(const TurnClause& clause, const TurnDraft& so_far) {
  const bool no_foot = so_far.feet_named.empty();
  const auto* foot = std::get_if<FootCorrected>(&clause);
  return std::holds_alternative<ClawCorrected>(clause) ||
         (foot != nullptr && (no_foot || foot->only)) ||
         (std::holds_alternative<NothingAfterAll>(clause) && no_foot);
}

bool is_judged_later(const TurnClause& clause, const TurnDraft& so_far) {
  const auto* finding = std::get_if<FindingSaid>(&clause);
  if (finding != nullptr && may_mend_an_earlier_line(so_far, *finding)) return true;
  const auto* act = std::get_if<ActionSaid>(&clause);
  const bool awaits_time = act != nullptr && needs_time(act->action.kind);
  const auto* mobility = std::get_if<MobilityTold>(&clause);
  const bool mends_mobility = mobility != nullptr && mobility->is_correction;
  const bool mends_claw =
      std::holds_alternative<ClawCorrected>(clause) && so_far.since_naming.empty();
  return awaits_time || mends_mobility || mends_claw ||
         std::holds_alternative<DetailCorrected>(clause) ||
         std::holds_alternative<TimeCorrected>(clause) ||
         std::holds_alternative<FindingTakenBack>(clause) ||
         std::holds_alternative<MeasureTakenBack>(clause) ||
         std::holds_alternative<ReasonTakenBack>(clause) ||
         std::holds_alternative<ActTakenBack>(clause);
}

}  // namespace evenclaw
