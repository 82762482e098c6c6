// What is called of a cow goes into her draft.
#pragma once

#include "core/api/recording/in_crush.hpp"
#include "core/api/recording/visit_book.hpp"
#include "core/base/result.hpp"
#include "core/trade/call_line/turn_clause.hpp"

namespace evenclaw {

/// Adds one clause with what it means beside what was called of her before: a foot "rest fine" had
/// spoken of, what she had last time on the right foot, the number she was called by first. Faults
/// of add_clause().
Outcome add_to(const VisitBook& book, InCrush& cow, const TurnClause& clause);

}  // namespace evenclaw
