// Open tasks as every list tells them: no order against what is asked or held back.
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
/// (days_asked.hpp), and an end of withdrawal stands until the law's floor has passed
/// (below_floor.hpp, which may add to the tasks). The order of the tasks stays.
Outcome tell_open_tasks(Store& store, std::optional<HerdId> herd, Day today,
                        std::vector<TaskRow>& tasks);

}  // namespace evenclaw
