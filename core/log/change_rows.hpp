// The row of a change the farm made, from the entries that tell of it.
#pragma once

#include <span>

#include "core/log/entry.hpp"
#include "core/trade/rows.hpp"

namespace evenclaw {

/// Adds the row of that change; none when it was told to be none. `counting`: the entries that
/// count (standing_among), in the total order: each adds what was not told before it and changes
/// what it tells otherwise.
void add_change_rows(HerdId herd, VisitId change, std::span<const Entry* const> counting,
                     Rows& rows);

}  // namespace evenclaw
