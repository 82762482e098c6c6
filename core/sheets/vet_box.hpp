// The box for the vet: which cow, which leg, what and why, by when, and what to leave alone.
#pragma once

#include <vector>

#include "core/paper/document.hpp"
#include "core/sheets/visit_view.hpp"

namespace evenclaw {

/// Of whom what was seen could be notifiable, and that nobody and nothing leaves: read before all
/// else. Empty when there is none.
std::vector<Block> standstill_box(const VisitView& view);

/// Each cow of cows_for_vet() once, with whether the vet was asked for; of one cow what is most
/// urgent. Then what was asked of news that may tell of a sign or names the vet. One sentence
/// instead of a box when there is none of it.
std::vector<Block> vet_box(const VisitView& view);

/// The cows of the box, the leg and why, a line for each, below a heading of level 3: for a page
/// that is handed on without it. Empty when the box holds nobody.
std::vector<Block> called_to(const VisitView& view);

/// The box tells of some cow, or asks what was meant.
bool is_vet_told_of_any(const VisitView& view);

/// He is to be rung today for a cow.
bool is_vet_needed_today(const VisitView& view);

}  // namespace evenclaw
