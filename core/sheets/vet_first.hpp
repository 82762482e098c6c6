// What the farm is to do for a cow on a day, where the vet is called to the same place.
#pragma once

#include <vector>

#include "core/sheets/visit_view.hpp"
#include "core/sheets/words.hpp"
#include "core/trade/task_rows.hpp"

namespace evenclaw {

/// No list gives an order against the vet's box: where he is to see that foot or her, the farm's
/// look at it is "look at left hind again (the vet first: see his box)", her walk likewise, without
/// "ring if no better"; a wrap comes off a foot that is to be left alone only after him. A wrap on
/// foul comes off today, and of one on a foot that bleeds the vet is asked today when. What stays
/// with the trimmer, and what was only asked about, stays as it was (our judgement).
void tell_vet_first(VisitView& view);

/// The same on a list without a box: where a task of the vet's, more than pain relief alone, stands
/// open for that foot or for her, "look at left hind again (the vet is asked for
/// first)". What the sheet knows beside the tasks, a sign nobody asked him of, is not seen here.
void tell_vet_asked_first(std::vector<TaskRow>& tasks, const Wording& wording);

}  // namespace evenclaw
