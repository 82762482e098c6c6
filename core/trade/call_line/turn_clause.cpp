#include "core/trade/call_line/turn_clause.hpp"

namespace evenclaw {

TurnClause::TurnClause(const TurnClause& other) = default;
TurnClause::TurnClause(TurnClause&& other) noexcept = default;
TurnClause& TurnClause::operator=(const TurnClause& other) = default;
TurnClause& TurnClause::operator=(TurnClause&& other) noexcept = default;
TurnClause::~TurnClause() = default;

bool operator==(const TurnClause& a, const TurnClause& b) {
  return static_cast<const AnyTurnClause&>(a) == static_cast<const AnyTurnClause&>(b);
}

}  // namespace evenclaw
