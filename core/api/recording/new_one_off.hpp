// "LH wrap off" said of a foot whose wrap was told off before and that got a new one since: it is
// the new one that is off.
#pragma once

#include <optional>
#include <string>

#include "core/api/recording/crush.hpp"
#include "core/api/recording/visit_book.hpp"
#include "core/base/result.hpp"
#include "core/trade/call_line/line.hpp"
#include "core/trade/check.hpp"
#include "core/trade/task.hpp"
#include "core/trade/turn.hpp"

namespace evenclaw {

/// True when `more` tells a wrap or block off, and puts none on, on a foot of which `before` told
/// that already, in the same way, and then put another one on. Told in another way ("came off") it
/// is no repetition, and a check asks which holds.
bool tells_the_new_one_off(const Turn& before, const Turn& more);

/// True when `later` put a wrap or block on where `before` tells that one is off.
bool puts_on_what_was_told_off(const Turn& before, const Turn& later);

/// Her past without the wraps and blocks that `before`, her first call at this visit, put new ones
/// in the place of: what is told off at a second call is not surely the old one.
CowPast without_replaced(CowPast past, const Turn& before);

/// The fault of such a line about her in the crush: it could be said once more of the old one.
/// Nothing for any other line.
std::optional<Fault> new_one_off_in_crush(const VisitBook& book, const Crush& crush,
                                          const Line& line);

/// What is asked when news tells a wrap or block off that she in the crush got in this very turn:
/// on the foot that is named, or anywhere when none is, no other one is left. `past` is as
/// recorded. Nothing when the news is of another one.
std::optional<std::string> asked_of_new_one(const Turn& turn, const NewsSaid& news,
                                            const CowPast& past);

}  // namespace evenclaw
