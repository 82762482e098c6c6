// Tasks of a cow: made, moved, closed, and open again when she who had left comes back.
#pragma once

#include <optional>
#include <vector>

#include "core/log/cow_story.hpp"
#include "core/trade/task_rows.hpp"

namespace evenclaw {

/// The first telling that she left which no later turn has shown to be wrong; nothing while she is
/// there. A turn that was not done shows nothing.
const Told<CowLeft>* left_for_good(const CowStory& story);

/// One row per task. Of several closings the first in the total order counts, of several moves the
/// last. What was closed because she left is open again once she is seen in a later turn. What is
/// to be done about a wrap or block that was told off and told still on is open, in words that say
/// so, until somebody tells which holds: off, it is closed by that.
std::vector<TaskRow> tasks_of(const CowStory& story);

}  // namespace evenclaw
