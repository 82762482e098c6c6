// Which cows are brought into the crush when the trimmer comes, and why.
#pragma once

#include <vector>

#include "core/base/random.hpp"
#include "demo/complication.hpp"
#include "demo/crush.hpp"
#include "demo/farm.hpp"
#include "demo/herd.hpp"

namespace evenclaw::demo {

/// How the trimmer comes in a week: not at all, for the whole herd, or for those whose time it is.
enum class VisitKind { none, round, day_of_some };

/// `week` is counted from the first visit of all, which is a round where herds are trimmed whole.
VisitKind visit_in(const Farm& farm, int week);

struct VisitWeek {
  int week = 0;  // counted as for visit_in()
  VisitKind kind = VisitKind::none;
};

/// In the order in which they stand; rechecks first. Some that should come again are not brought.
std::vector<Coming> who_comes(const Herd& herd, const Farm& farm, VisitWeek visit,
                              const Complications& complications, RandomStream& draws);

}  // namespace evenclaw::demo
