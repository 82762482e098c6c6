// The rows of a mobility scoring, made from the entries that tell of it.
#pragma once

#include <span>

#include "core/log/entry.hpp"
#include "core/trade/rows.hpp"

namespace evenclaw {

/// Adds the row of one scoring and those of its scores; none when no entry tells of it. `counting`:
/// the entries that count (standing_among), in the total order. What mends takes the place of all
/// that was said before of that number, or counted at that score; the same said again is one;
/// anything else said of a number twice stays beside it, marked.
void add_scoring_rows(HerdId herd, VisitId scoring, std::span<const Entry* const> counting,
                      Rows& rows);

}  // namespace evenclaw
