// "Wrap on, off 5d" where three days had been said: it is one wrap, and the later time holds.
#pragma once

#include <string>
#include <vector>

#include "core/base/date.hpp"
#include "core/trade/call_line/language.hpp"
#include "core/trade/turn.hpp"

namespace evenclaw {

/// "wrap on, left hind: by Wed 25 Nov now, not Mon 23 Nov": each act of `now` that `before` had
/// with another day.
std::vector<std::string> times_said_anew(const Turn& before, const Turn& now, Day visit_day,
                                         const Language& language);

/// "milk withheld: Mon 2 Nov holds, not Thu 29 Oct; ...": what was said to be held back for less
/// than before, so that the longer time holds.
std::vector<std::string> shorter_times_said(const Turn& before, const Turn& now, Day visit_day,
                                            const Language& language);

}  // namespace evenclaw
