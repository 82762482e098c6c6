// "Mobility 2 of 3; mobility 3 of 3" in one line: which one holds?
#pragma once

#include <cstddef>
#include <optional>
#include <span>

#include "core/trade/call_line/line_builder.hpp"

namespace evenclaw {

/// Why the mobility score of clause `at` is refused when the same line called another one of her
/// before: nothing of the line is on record, so no correction is needed. Nothing for all others.
std::optional<PlacedFault> two_scores_in_one_line(std::span<const PlacedClause> clauses,
                                                  std::size_t at);

}  // namespace evenclaw
