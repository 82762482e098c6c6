// Products of a herd of which the list once stated less than the law asks off label, and the ends
// of withdrawal that were told by it.
#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <vector>

#include "core/base/date.hpp"
#include "core/base/id.hpp"
#include "core/base/result.hpp"
#include "core/ports/store.hpp"
#include "core/trade/task_rows.hpp"

namespace evenclaw {

/// With the days for which the law's floor asks at most (core/trade/medicine_rules.hpp).
Result<std::map<ProductId, std::int32_t>> products_below_floor(Store& store, HerdId herd);

/// An end of withdrawal that was told below the law's floor stands until the floor has passed, with
/// the floor's day, and that the vet is asked before anything is sold (core/sheets/
/// off_label_floor.hpp). Where no open task of `tasks` tells that half of what she was given then,
/// one is added that nobody wrote down.
Outcome tell_off_label_floors(Store& store, std::optional<HerdId> herd, Day today,
                              std::vector<TaskRow>& tasks);

}  // namespace evenclaw
