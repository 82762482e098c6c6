// Cows of this herd for whom a new one may have been mistaken.
#pragma once

#include <vector>

#include "core/api/recording/number_slip.hpp"
#include "core/api/recording/visit_book.hpp"
#include "core/base/result.hpp"
#include "core/trade/check.hpp"
#include "core/trade/turn.hpp"

namespace evenclaw {

/// Known cows whose numbers are a slip away from hers, or who were called in her words before they
/// had one; none when she has been here before this visit.
Result<std::vector<NearCow>> near_cows(const VisitBook& book, const CowSaid& cow,
                                       const CowPast& past);

}  // namespace evenclaw
