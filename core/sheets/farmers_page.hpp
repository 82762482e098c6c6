// The first page of a visit sheet: what the farmer has to know and do.
#pragma once

#include <vector>

#include "core/paper/document.hpp"
#include "core/sheets/visit_view.hpp"

namespace evenclaw {

/// Vet first, then withdrawal, what to do by when, what was not done and why, the day in three
/// sentences, when to ring, what to take care of.
std::vector<Block> farmers_page(const VisitView& view);

}  // namespace evenclaw
