// Tasks of a cow who was taken for two: what was called of the one settles what was open of the
// other.
#pragma once

#include "core/api/journal.hpp"
#include "core/base/id.hpp"
#include "core/base/result.hpp"
#include "core/ports/store.hpp"

namespace evenclaw {

struct TwoCows {
  CowId waits;   // whose tasks are open
  CowId called;  // who was in the crush since
};

/// Adds to the next write what turns of the one would have closed of the other, had she been known
/// there. It is told of her who was called: should the two be parted again, it does not count.
Outcome close_by_the_other(Store& store, HerdId herd, const TwoCows& cows, Journal& journal);

}  // namespace evenclaw
