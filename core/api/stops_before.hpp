// The Stops and signs for the vet of earlier visits, read from the store.
#pragma once

#include <set>
#include <vector>

#include "core/api/ports.hpp"
#include "core/base/result.hpp"
#include "core/sheets/visit_sheet.hpp"

namespace evenclaw {

/// What was shown and decided at the visit in the turns that count, as their bodies hold it.
Result<std::vector<TurnWarning>> warnings_of(Store& store, HerdId herd, VisitId visit,
                                             const std::set<EntryId>& count);

/// What is still open on the day of the visit of the Stops and signs of others before it, as
/// stops_left_open() chooses. `turns`: of the herd of the last longest_ago_days.
Result<std::vector<EarlierStop>> stops_before(Store& store, const VisitRow& visit,
                                              const std::vector<TurnRow>& turns);

}  // namespace evenclaw
