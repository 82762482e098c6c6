// A block that came off by itself while the claw beside it still hurts: the trimmer is rung.
#pragma once

#include <optional>
#include <vector>

#include "core/base/date.hpp"
#include "core/trade/follow_up.hpp"
#include "core/trade/foot.hpp"
#include "core/trade/rows.hpp"
#include "core/trade/task.hpp"
#include "core/trade/turn.hpp"

namespace evenclaw {

/// What is asked where a block of that foot is told to have come off by itself on `day`: the farmer
/// rings the trimmer, when that is before the day on which its removal was to begin and something
/// that hurts was found on the foot and not yet said to be gone, unless it was seen on that day
/// (our judgement). `past` is what was known before that was told. Without its id.
std::optional<TaskMade> asked_of_lost_block(const Rows& past, Foot foot, Claw claw, Day day);

/// The same of one found in the crush, when nobody said what is on the foot and no block is on it
/// after the turn.
std::optional<TaskMade> asked_of_lost_block(const Rows& past, const FootCall& call, Day day);

/// Told to be on after all, that is over on these feet; on all when none is named.
void close_lost_blocks(std::vector<TaskClosed>& closed, const Rows& past, const FootSet& feet);

/// Whether the task is that one.
bool is_of_lost_block(const TaskRow& task);

}  // namespace evenclaw
