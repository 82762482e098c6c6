// A block is put on, or one of last time is refitted: not both of one claw in one turn.
#pragma once

#include <optional>

#include "core/trade/call_line/open_item.hpp"
#include "core/trade/turn.hpp"

namespace evenclaw {

/// Why that cannot be said of a foot so far called like this: "refitted" of a block that was put on
/// in this very turn, or the other way round.
std::optional<Refusal> why_not_refitted(const FootCall& call, const Action& said);

}  // namespace evenclaw
