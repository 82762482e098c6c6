// "No, outside sole ulcer" of a sole ulcer that was called inside: the claw was the slip.
#pragma once

#include <optional>

#include "core/trade/call_line/turn_clause.hpp"

namespace evenclaw {

struct ClawInstead {
  FindingTakenBack wrong;
  FindingSaid right;  // with all that was called of it
};

/// Nothing unless one foot is spoken of and the lesion was called there once, on another claw or
/// none.
std::optional<ClawInstead> claw_instead(const TurnDraft& draft, const TurnClause& clause);

}  // namespace evenclaw
