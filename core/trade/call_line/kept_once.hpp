// What was said twice and kept once: a correction mends both sayings, or the first would stay.
#pragma once

#include "core/trade/call_line/turn_clause.hpp"
#include "core/trade/foot.hpp"

namespace evenclaw {

/// The draft with what was said since the feet were named taken off the turn before that, where it
/// was said alike on those feet; `right` is left as it is. Of one foot, what only the first saying
/// told is in the last one now. What told more than a saying before it that `right` got as well
/// completes one of both, and the first one stays.
TurnDraft without_said_alike(const TurnDraft& draft, Foot right);

/// Mends the claw of what was said like `wrong` on the feet before they were named. `wrong` is a
/// finding, something done or a measure; nothing happens for any other clause.
void mend_claw_said_alike(TurnDraft& draft, const TurnClause& wrong, Claw right);

}  // namespace evenclaw
