#include "core/trade/call_line/recalled.hpp"

#include <algorithm>
#include <cstddef>
#include <vector>

#include "core/trade/call_line/claw_said_last.hpp"

namespace evenclaw {

namespace {

std::vector<TurnClause> said_of(const FootCall& call) {
  std::vector<TurnClause> said;
  const bool is_said_by_its_findings =
      call.state == FootState::finding || call.state == FootState::unsaid;
  for (const Finding& finding : call.findings) said.emplace_back(FindingSaid{finding});
  for (const Action& action : call.actions) said.emplace_back(ActionSaid{action, false});
  for (const Measure& measure : call.measures) said.emplace_back(MeasureSaid{measure});
  if (call.trimmed != Trimmed::not_called) said.emplace_back(TrimmedSaid{call.trimmed});
  // Behind what was done there, which "nothing found" before it would speak against.
  if (!is_said_by_its_findings) said.emplace_back(FootStateSaid{call.state});
  if (!call.note.empty()) said.emplace_back(NoteSaid{call.note});
  return said;
}

}  // namespace

TurnDraft recalled(const Turn& turn, std::optional<Foot> foot) {
  TurnDraft draft;
  draft.turn = turn;
  draft.before_naming = turn;
  if (!foot) return draft;
  draft.feet_named = FootSet{*foot};
  draft.last_named = draft.feet_named;
  std::vector<FootCall>& before = draft.before_naming.feet;
  before.erase(std::remove_if(before.begin(), before.end(),
                              [&](const FootCall& call) { return call.foot == *foot; }),
               before.end());
  if (const FootCall* call = find_foot(turn, *foot)) draft.since_naming = said_of(*call);
  return draft;
}

bool is_claw_of_a_finding_last(const TurnDraft& draft) {
  const std::optional<std::size_t> last = claw_said_last(draft.since_naming);
  return last && std::holds_alternative<FindingSaid>(draft.since_naming[*last]);
}

std::optional<Foot> named_again(const TurnDraft& draft) {
  if (!draft.since_naming.empty() || draft.feet_named.count() != 1) return std::nullopt;
  const auto foot = std::find_if(all_feet.begin(), all_feet.end(),
                                 [&draft](Foot each) { return draft.feet_named.has(each); });
  const FootCall* call = find_foot(draft.turn, *foot);
  if (call == nullptr || said_of(*call).empty()) return std::nullopt;
  return *foot;
}

}  // namespace evenclaw
