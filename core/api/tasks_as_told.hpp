// Open tasks as every list tells them: no order for a day that is still asked about.
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
/// (days_asked.hpp).
Outcome tell_open_tasks(Store& store, std::optional<HerdId> herd, Day today,
                        std::vector<TaskRow>& tasks);

}  // namespace evenclaw
