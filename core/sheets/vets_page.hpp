// The page for the vet: what was found in codes, what does not heal, what nobody could explain.
#pragma once

#include <vector>

#include "core/paper/document.hpp"
#include "core/sheets/visit_view.hpp"

namespace evenclaw {

/// On a sheet of its own: the cows of his box, signs he knows of; findings that came back or do not
/// heal, then the others; lame cows of whom nothing was found; blood drawn and thin soles;
/// medicines with who directed them; stages of digital dermatitis out of the feet looked at;
/// mobility scores by their scale. Parts of which there is nothing are left out, and the page with
/// them when there is nothing at all.
std::vector<Block> vets_page(const VisitView& view);

/// So few cows came that no page is made for the vet alone.
bool has_few_cows(const VisitView& view);

/// Then this stands before the list cow by cow, on no sheet of its own: what neither his box nor
/// the list tells. Empty when there is nothing.
std::vector<Block> vets_part_of_few(const VisitView& view);

}  // namespace evenclaw
