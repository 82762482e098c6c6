// Looks that follow from what was found, where the caller planned none himself.
#pragma once

#include <span>
#include <vector>

#include "core/trade/rows.hpp"
#include "core/trade/task.hpp"
#include "core/trade/turn.hpp"

namespace evenclaw {

/// What the findings of a settled turn ask for by themselves, without ids: after a lesion of the
/// horn without a block, after a treated sore of digital dermatitis, after foul, and, when she came
/// lame, or news told that she still is, and nothing else asks for her, how she walks. `called` are
/// the tasks made by what was called: see again or the vet for a foot, or for her, leaves no look
/// to be added there.
std::vector<TaskMade> looks_asked_for(const Turn& turn, const Rows& past,
                                      std::span<const TaskMade> called, Day visit_day);

/// It was said what is there, or that nothing is.
bool was_looked_at(const FootCall& call);

/// A look that followed from what was found on the foot: found or not the next time it is lifted,
/// it is asked for anew.
bool follows_from_finding(const TaskRow& task);

/// A look after open horn, for which the looks at a block stand.
bool follows_from_open_horn(const TaskRow& task);

/// She came lame, or her walk was scored lame: 2 or 3 of 3, 3 to 5 of 5.
bool is_lame(const Turn& turn);

}  // namespace evenclaw
