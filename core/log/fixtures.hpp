// Blocks and wraps: from the day each went on until it is known to be off.
#pragma once

#include <vector>

#include "core/log/cow_story.hpp"
#include "core/trade/foot_rows.hpp"

namespace evenclaw {

/// One row per block or wrap put on, from turns and from what was told outside them.
///
/// "Don't know" ends nothing: the row stands as `unknown` with the day that was said, until someone
/// tells more. A block stacked on one that is on belongs to it. One put on where one is known to be
/// on means that the old one is off: it came off by itself when the new one was refitted after
/// loss, else it was taken off to make room. What a turn says of what was there before counts
/// before what it puts on, in whatever order it was spoken. One that was told off and told still on
/// (core/log/fates_in_doubt.hpp) is on until somebody says which holds.
std::vector<OnFootRow> fixtures_of(const CowStory& story);

}  // namespace evenclaw
