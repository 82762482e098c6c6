// The boxes of milk and meat: whose is not for sale, and of whose nobody said, so that it is asked.
#pragma once

#include <vector>

#include "core/paper/document.hpp"
#include "core/sheets/visit_view.hpp"

namespace evenclaw {

/// Of each cow with an open end of withdrawal: until which day and milking (the latest of her milk,
/// then of her meat), for what, on whose direction, and how she is marked. In a box of its own what
/// was put on or given without a withdrawal that anybody stated, at this visit or before, and to
/// whom; the numbers of few cows are set large. A cow who left stays while her milk or meat is held
/// back or not known, with whom to tell of it. Nothing when there is none of it.
std::vector<Block> withdrawal_box(const VisitView& view);

/// Cows whose ends are all over and of whom nothing is left to ask, below a heading: in no box, for
/// their milk and meat may be sold.
std::vector<Block> withdrawals_over(const VisitView& view);

}  // namespace evenclaw
