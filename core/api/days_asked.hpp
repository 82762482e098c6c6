// Wraps and blocks on the list of what is due whose day was asked about, and nobody answered.
#pragma once

#include <vector>

#include "core/base/result.hpp"
#include "core/ports/store.hpp"
#include "core/trade/task_rows.hpp"

namespace evenclaw {

/// Tells them as the sheet does (core/sheets/days_in_doubt.hpp): no order for a day that nobody
/// confirmed. The others stay as they are, and so does a task that was moved by hand.
Outcome tell_days_in_doubt(Store& store, std::vector<TaskRow>& tasks);

}  // namespace evenclaw
