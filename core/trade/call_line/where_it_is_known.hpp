// A wrap or block from before told of without its foot, in a line that says more of her: "301
// recheck; block gone; rest fine". Her past knows the foot.
#pragma once

#include <cstddef>
#include <span>

#include "core/trade/call_line/line_builder.hpp"

namespace evenclaw {

/// The clause tells what became of a wrap or block, no foot is named and nothing behind it is said
/// of one but "nothing found" right behind it, and the line tells what only a turn can: that, why
/// she came, or that the rest is fine.
bool may_be_where_it_is_known(std::span<const PlacedClause> clauses, std::size_t at);

}  // namespace evenclaw
