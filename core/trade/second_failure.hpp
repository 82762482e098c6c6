// Treatment that failed before and fails again: from then on it is the vet's.
#pragma once

#include <optional>

#include "core/base/date.hpp"
#include "core/trade/rows.hpp"
#include "core/trade/turn.hpp"

namespace evenclaw {

/// The first "blocked again" said of the foot in this turn, or null.
const Action* blocked_again_on(const FootCall& call);

/// The last day before today, at most 120 days ago (our judgement: a block of half a year ago was
/// for another story), on which that claw was blocked again because it had not healed.
std::optional<Day> blocked_again_before(const Rows& past, Foot foot, Claw claw, Day today);

/// The first finding of the foot that should have healed by now: horn broken through or come apart,
/// not called slight, found at its third visit or later (our judgement). Null when there is none.
const Finding* found_at_third_visit(const Rows& past, const FootCall& call, Day today);

/// One of the two is so.
bool fails_again(const Rows& past, const FootCall& call, Day today);

}  // namespace evenclaw
