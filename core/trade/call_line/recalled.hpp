// A turn that was recorded, taken up as a draft once more so that what was called can be mended.
#pragma once

#include <optional>

#include "core/trade/call_line/turn_clause.hpp"
#include "core/trade/turn.hpp"

namespace evenclaw {

/// The turn as if `foot` had been named last and all that was called of it said since: findings
/// first, then what was done and what was measured, each in the order called. Without a foot, what
/// is said next is of the whole cow. The words as said are not in it.
TurnDraft recalled(const Turn& turn, std::optional<Foot> foot);

/// The one foot that was named just now, when something had been called of it before.
std::optional<Foot> named_again(const TurnDraft& draft);

/// The claw said last since the feet were named is of a finding: "no, inside" mends that one.
bool is_claw_of_a_finding_last(const TurnDraft& draft);

}  // namespace evenclaw
