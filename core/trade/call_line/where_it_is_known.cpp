#include "core/trade/call_line/where_it_is_known.hpp"

#include <algorithm>
#include <variant>

#include "core/trade/on_foot.hpp"

namespace evenclaw {

namespace {

template <class T>
bool says(const PlacedClause& placed) {
  const auto* said = std::get_if<TurnClause>(&placed.clause);
  return said != nullptr && std::holds_alternative<T>(*said);
}

bool tells_of_one_from_before(const PlacedClause& placed) {
  const auto* said = std::get_if<TurnClause>(&placed.clause);
  const auto* act = said == nullptr ? nullptr : std::get_if<ActionSaid>(said);
  const std::optional<FixtureSaid> told =
      act == nullptr || act->whole_cow ? std::nullopt : fixture_said(act->action.kind);
  return told && (is_off_after(told->step) || told->step == FixtureStep::left_on);
}

bool is_said_of_a_foot(const PlacedClause& placed) {
  return says<FootStateSaid>(placed) || says<FindingSaid>(placed) || says<TrimmedSaid>(placed) ||
         says<MeasureSaid>(placed);
}

}  // namespace

bool may_be_where_it_is_known(std::span<const PlacedClause> clauses, std::size_t at) {
  if (!tells_of_one_from_before(clauses[at])) return false;
  const auto before = clauses.first(at);
  if (std::any_of(before.begin(), before.end(), says<FeetNamed>)) return false;
  for (const PlacedClause& next : clauses.subspan(at + 1)) {
    if (says<FeetNamed>(next) || is_said_of_a_foot(next)) return false;
  }
  return std::any_of(clauses.begin(), clauses.end(), [](const PlacedClause& each) {
    return says<ReasonSaid>(each) || says<RestFineSaid>(each);
  });
}

}  // namespace evenclaw
