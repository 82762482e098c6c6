// The rows of a farm walk, made from the entries that tell of it.
#pragma once

#include <span>

#include "core/log/entry.hpp"
#include "core/trade/rows.hpp"

namespace evenclaw {

/// Adds one row per measure of that walk. `counting`: the entries that count (standing_among), in
/// the total order. What mends takes the place of all that was said before of that measure; the
/// same said again is one; anything else said twice stays beside it, marked. That nobody looked
/// gives way to what somebody saw.
void add_walk_rows(HerdId herd, VisitId walk, std::span<const Entry* const> counting, Rows& rows);

}  // namespace evenclaw
