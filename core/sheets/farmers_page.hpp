// The first page of a visit sheet: what the farmer has to know and do.
#pragma once

#include <vector>

#include "core/paper/document.hpp"
#include "core/sheets/visit_view.hpp"

namespace evenclaw {

/// What may not be sold first, then the vet, what to do by when, who stays near, what was not done
/// and why, the day in short, the work, when to ring, what to take care of.
std::vector<Block> farmers_page(const VisitView& view);

}  // namespace evenclaw
