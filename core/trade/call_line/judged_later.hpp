// Clauses that a line alone cannot judge: what they speak of may stand on another line.
#pragma once

#include "core/trade/call_line/line.hpp"

namespace evenclaw {

/// Right behind her number it mends what was called of her earlier that day.
bool may_mend_an_earlier_turn(const TurnClause& clause, const TurnDraft& so_far);

/// What is taken back or mended may have been said on an earlier line, and a time may still be to
/// come.
bool is_judged_later(const TurnClause& clause, const TurnDraft& so_far);

}  // namespace evenclaw
