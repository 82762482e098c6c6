// A wrap or block that was told off and then still on: which of the two is right is asked, and what
// was closed is to be done once more when it is on after all.
#pragma once

#include "core/base/date.hpp"
#include "core/base/id.hpp"
#include "core/trade/follow_up.hpp"
#include "core/trade/foot.hpp"
#include "core/trade/rows.hpp"
#include "core/trade/task.hpp"

namespace evenclaw {

/// The feet, of those the news names or all, on which such a wrap or block went off on that day or
/// after it and none is on now. Empty for news of neither.
FootSet said_to_be_off(const NewsSaid& news, const Rows& past, Day from);

/// When it was told, and the entry that tells it.
struct ToldOn {
  Day day;
  EntryId entry;
};

/// It is on these feet after all: the tasks that were closed from `from` on because it was off are
/// made anew, due when they were and not before the day of the news; the farmer is to take it off
/// where none was open.
NewsEffect on_after_all(const NewsSaid& news, const FootSet& feet, const Rows& past, Day from,
                        const ToldOn& told);

}  // namespace evenclaw
