// The box that stands first: whose milk and meat is not for sale, and of whom nobody said.
#pragma once

#include <vector>

#include "core/paper/document.hpp"
#include "core/sheets/visit_view.hpp"

namespace evenclaw {

/// Of each cow with an open end of withdrawal: until which day and milking (the latest of her milk
/// and of her meat), for what, on whose direction, and how she is marked. Then what was put on or
/// given without a withdrawal that anybody stated, at this visit or before, and to whom. A cow who
/// left stays while her milk or meat is held back or not known, with whom to tell of it. Nothing
/// when there is none of it.
std::vector<Block> withdrawal_box(const VisitView& view);

}  // namespace evenclaw
