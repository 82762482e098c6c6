// The page for the vet: what was found in codes, what does not heal, what nobody could explain.
#pragma once

#include <vector>

#include "core/paper/document.hpp"
#include "core/sheets/visit_view.hpp"

namespace evenclaw {

/// On a sheet of its own: signs and Stops nobody answered; findings that came back or do not heal,
/// then the others; lame cows of whom nothing was found; blood drawn and thin soles; medicines with
/// who directed them; stages of digital dermatitis out of the feet looked at; mobility scores by
/// their scale. Parts of which there is nothing are left out, and the page with them when there is
/// nothing at all.
std::vector<Block> vets_page(const VisitView& view);

}  // namespace evenclaw
