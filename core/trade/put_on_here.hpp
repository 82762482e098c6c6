// What was put on her feet at this very visit, apart from what was there when she came.
#pragma once

#include "core/base/id.hpp"
#include "core/trade/foot.hpp"
#include "core/trade/foot_rows.hpp"
#include "core/trade/rows.hpp"

namespace evenclaw {

/// A wrap or block put on at the visit; one that was only seen to be there is older than that.
bool is_put_on_at(const OnFootRow& row, Fixture fixture, VisitId visit);

/// Her past without the wraps or blocks put on at the visit on these feet, and without what is to
/// be done about them. What was planned at the visit for one that was there before ("wrap still on,
/// off Thu") stays.
Rows without_put_on_at(Rows past, Fixture fixture, VisitId visit, const FootSet& feet);

}  // namespace evenclaw
