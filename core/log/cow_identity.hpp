// Who a cow is: her numbers through time, and what she is called when she has none.
#pragma once

#include <vector>

#include "core/log/cow_story.hpp"
#include "core/trade/cow_rows.hpp"

namespace evenclaw {

/// The numbers she had, each from its first day until the day before the next. Of two given to one
/// cow from the same day the last in the total order counts; two that were one cow seen twice that
/// day were united, and both numbers are hers. The same number given again
/// changes nothing but its end, when one is told.
std::vector<CowNumberRow> numbers_of(const CowStory& story);

/// Her row. A number said in a turn stands for one nobody registered; she is numbered once any
/// turn or a number given later says so. Her days are those of her turns that were not "not done",
/// without any, those of whatever else was told of her.
CowRow cow_row_of(const CowStory& story, const std::vector<CowNumberRow>& numbers);

}  // namespace evenclaw
