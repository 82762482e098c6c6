// Rows as they stood on a day: what came later is taken out of them again.
#pragma once

#include <vector>

#include "core/base/date.hpp"
#include "core/trade/rows.hpp"

namespace evenclaw {

/// Of tasks, cows, cases and what is on feet. Tasks made on that day or before stay, also those
/// closed since; one closed after `today` is open again. `findings` are those of the cases, of all
/// visits.
void keep_as_it_stood(Rows& rows, Day day, Day today, const std::vector<FindingRow>& findings);

}  // namespace evenclaw
