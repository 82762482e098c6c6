// What is known of how a cow has to be handled, from all that was called of her.
#pragma once

#include <vector>

#include "core/log/cow_story.hpp"
#include "core/trade/handling_rows.hpp"

namespace evenclaw {

/// One row for each thing that was ever said of her: said of her as a whole or of a foot, in a turn
/// that was finished or not, or told as news. What is said to be over and never was said leaves no
/// row.
std::vector<HandlingRow> handling_of(const CowStory& story);

}  // namespace evenclaw
