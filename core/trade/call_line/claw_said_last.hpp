// What "no, inside" is of: what was said last with a claw that can be wrong.
#pragma once

#include <cstddef>
#include <optional>
#include <span>

#include "core/trade/call_line/open_item.hpp"
#include "core/trade/call_line/turn_clause.hpp"

namespace evenclaw {

/// Of what was said since the feet were named, oldest first, the finding, act or measure whose claw
/// was called last; where none was called, the only one that could have a claw. Nothing when there
/// is none, or when it could be any of several.
std::optional<std::size_t> claw_said_last(std::span<const TurnClause> since_naming);

/// Why it cannot be known which claw `right` mends: several could have one and none was called, or
/// a block was put on since of which nobody said the claw. Nothing where it is known.
std::optional<Refusal> why_claw_is_unclear(std::span<const TurnClause> since_naming, Claw right);

}  // namespace evenclaw
