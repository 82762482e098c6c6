// The routine trims that are due in a herd: read anew from what is known each time, never stored.
#pragma once

#include <optional>
#include <vector>

#include "core/api/ports.hpp"
#include "core/base/date.hpp"
#include "core/base/id.hpp"
#include "core/base/result.hpp"
#include "core/trade/task_rows.hpp"

namespace evenclaw {

/// As open tasks of the trimmer, one at the most for each cow of one herd, or of all, of whom a
/// calving, a drying off or an expected calving was told (core/trade/routine_trim.hpp). `made_on`
/// is the first day of the window. Cows that left are not passed over.
Result<std::vector<TaskRow>> routine_trims(Store& store, std::optional<HerdId> herd, Day today);

}  // namespace evenclaw
