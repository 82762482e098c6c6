// What was found at a visit, lesion by lesion, with the feet of which cows it was on.
#pragma once

#include <vector>

#include "core/paper/document.hpp"
#include "core/sheets/visit_view.hpp"

namespace evenclaw {

/// A heading and a table: the lesion with its code, on how many of the feet that were lifted, and
/// each cow with the foot and all that was called of it. The lesion found on most feet stands
/// first. Nothing when nothing was found.
std::vector<Block> found_by_kind(const VisitView& view);

}  // namespace evenclaw
