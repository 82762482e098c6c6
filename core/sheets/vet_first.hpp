// What the farm is to do for a cow on a day, where the vet is called to the same place.
#pragma once

#include "core/sheets/visit_view.hpp"

namespace evenclaw {

/// No list gives an order against the vet's box: where he is to see that foot or her, the farm's
/// look at it is "look at left hind again (the vet first: see his box)", her walk likewise, without
/// "ring if no better"; a wrap comes off a foot that is to be left alone only after him. What stays
/// with the trimmer, and what was only asked about, stays as it was (our judgement).
void tell_vet_first(VisitView& view);

}  // namespace evenclaw
