// A time that cannot be one as it was said, and how it is said: a date out of reach, "see again
// 10 Dec", "see again today".
#pragma once

#include <optional>

#include "core/base/date.hpp"
#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/line_builder.hpp"
#include "core/trade/call_line/trap.hpp"

namespace evenclaw {

/// The fault of a date before the visit, or so far behind it that the year is likely a slip; of a
/// day with its month, with the date to say; of "today" where a look is asked for.
std::optional<PlacedFault> date_misfit(const NextStep& next, Day visit_day,
                                       const Language& language);

}  // namespace evenclaw
