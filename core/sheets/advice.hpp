// When to ring and what to take care of: only what this day gives cause for, each with its status.
#pragma once

#include <vector>

#include "core/paper/document.hpp"
#include "core/sheets/visit_view.hpp"

namespace evenclaw {

std::vector<Block> when_to_ring(const VisitView& view);

/// Never without a status: a source, "common practice, no source", the vet, or local law.
std::vector<Block> cautions(const VisitView& view);

}  // namespace evenclaw
