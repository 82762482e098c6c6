// The work of a visit by kind, to be agreed with the farmer before leaving: counts, no prices.
#pragma once

#include <vector>

#include "core/paper/document.hpp"
#include "core/sheets/visit_view.hpp"

namespace evenclaw {

/// A table of what work_done() counts; nothing when no work was done.
std::vector<Block> work_tally(const VisitView& view);

}  // namespace evenclaw
