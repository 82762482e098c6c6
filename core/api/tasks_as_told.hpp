// Open tasks as every list tells them: no order against what is asked, held back or the vet's.
#pragma once

#include <optional>
#include <vector>

#include "core/base/date.hpp"
#include "core/base/id.hpp"
#include "core/base/result.hpp"
#include "core/ports/store.hpp"
#include "core/trade/task_rows.hpp"

namespace evenclaw {

/// Of one herd, or of all, seen from `today`. A day that nobody answered for is no order
/// (days_asked.hpp), an end of withdrawal stands until the law's floor has passed (below_floor.hpp,
/// which may add to the tasks), and where the vet is asked for he is first
/// (core/sheets/vet_first.hpp). The order of the tasks stays.
Outcome tell_open_tasks(Store& store, std::optional<HerdId> herd, Day today,
                        std::vector<TaskRow>& tasks);

}  // namespace evenclaw
