// The box for the vet: which cow, which leg, what and why, by when, and what to leave alone.
#pragma once

#include <vector>

#include "core/paper/document.hpp"
#include "core/sheets/visit_view.hpp"

namespace evenclaw {

/// Each cow once: whose vet was asked for, and whose Stop for the vet nobody answered. One sentence
/// instead of a box when no vet is asked for.
std::vector<Block> vet_box(const VisitView& view);

}  // namespace evenclaw
