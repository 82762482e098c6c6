// "Not done", and behind it something that was found or done.
#pragma once

#include <optional>

#include "core/trade/call_line/open_item.hpp"
#include "core/trade/call_line/turn_clause.hpp"

namespace evenclaw {

/// Why the clause cannot be added: she was said not to be done, and it is of a foot that was
/// lifted, or of all the rest. Nothing for anything else.
std::optional<Refusal> why_not_behind_not_done(const Turn& turn, const TurnClause& clause);

}  // namespace evenclaw
