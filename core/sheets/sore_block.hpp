// Other orders about a block of which the trimmer is rung today, for it stands on a sore claw.
#pragma once

#include <vector>

#include "core/sheets/words.hpp"
#include "core/trade/task_rows.hpp"

namespace evenclaw {

/// Where "ring trimmer: block on sore claw" is open, the other open tasks of that very block are
/// told as "block still on? left hind, outside claw, if the trimmer leaves it on": whether it stays
/// is his to say. Blocks of other claws stay as they are told. Days and order stay.
void tell_sore_blocks(std::vector<TaskRow>& tasks, const Wording& wording);

}  // namespace evenclaw
