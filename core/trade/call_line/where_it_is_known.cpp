#include "core/trade/call_line/where_it_is_known.hpp"

#include <algorithm>
#include <variant>

#include "core/trade/call_line/known_of_her.hpp"
#include "core/trade/on_foot.hpp"

namespace evenclaw {

namespace {

template <class T>
bool is_a(const PlacedClause& placed) {
  const auto* said = std::get_if<TurnClause>(&placed.clause);
  return said != nullptr && std::holds_alternative<T>(*said);
}

bool tells_of_one_from_before(const PlacedClause& placed) {
  const auto* said = std::get_if<TurnClause>(&placed.clause);
  const auto* act = said == nullptr ? nullptr : std::get_if<ActionSaid>(said);
  return act != nullptr && !act->whole_cow && concerns_one_from_before(act->action.kind);
}

bool says_nothing_found(const PlacedClause& placed) {
  const auto* clause = std::get_if<TurnClause>(&placed.clause);
  const auto* said = clause == nullptr ? nullptr : std::get_if<FootStateSaid>(clause);
  return said != nullptr && said->state == FootState::nothing_found;
}

bool is_said_of_a_foot(const PlacedClause& placed) {
  return is_a<FootStateSaid>(placed) || is_a<FindingSaid>(placed) || is_a<TrimmedSaid>(placed) ||
         is_a<MeasureSaid>(placed);
}

}  // namespace

bool may_be_where_it_is_known(std::span<const PlacedClause> clauses, std::size_t at) {
  if (!tells_of_one_from_before(clauses[at])) return false;
  const auto before = clauses.first(at);
  if (std::any_of(before.begin(), before.end(), is_a<FeetNamed>)) return false;
  auto behind = clauses.subspan(at + 1);
  // "Wrap off; nothing found": there at least.
  const bool is_fine_there = !behind.empty() && says_nothing_found(behind.front());
  if (is_fine_there) behind = behind.subspan(1);
  // "Wrap off; RH DD chronic": of the foot that is named behind it, if that carries one.
  for (const PlacedClause& next : behind) {
    if (is_a<FeetNamed>(next)) return true;
    if (is_said_of_a_foot(next)) return false;
  }
  return is_fine_there || std::any_of(clauses.begin(), clauses.end(), [](const PlacedClause& each) {
           return is_a<ReasonSaid>(each) || is_a<RestFineSaid>(each);
         });
}

}  // namespace evenclaw
