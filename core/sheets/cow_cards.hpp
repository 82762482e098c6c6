// The list cow by cow: a card with her feet in words and drawn; her number alone when nothing was
// found.
#pragma once

#include <vector>

#include "core/paper/document.hpp"
#include "core/sheets/visit_view.hpp"

namespace evenclaw {

/// Cards of the cows of whom there is more to say than that nothing was found on today's feet, by
/// number; then a table of the others, a row for those of whom the same is told, most cows first.
std::vector<Block> cow_by_cow(const VisitView& view);

}  // namespace evenclaw
