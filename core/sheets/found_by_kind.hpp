// What was found at a visit, lesion by lesion, with the feet of which cows it was on.
#pragma once

#include <vector>

#include "core/paper/document.hpp"
#include "core/sheets/visit_view.hpp"

namespace evenclaw {

/// A heading and a table: the lesion with its code, on how many of the feet that were lifted, and
/// all that was called of it with the cows and feet of which that was called. The lesion found on
/// most feet stands first, within a lesion what was called of most cows. Nothing when nothing was
/// found.
std::vector<Block> found_by_kind(const VisitView& view);

}  // namespace evenclaw
