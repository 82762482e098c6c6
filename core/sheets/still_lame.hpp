// Cows that came lame at an earlier visit and whose lame foot nobody has had up since.
#pragma once

#include <vector>

#include "core/sheets/visit_sheet.hpp"

namespace evenclaw {

/// Of each cow without a turn at this visit: her last day before it, when she came lame then and
/// one of her lame feet was not lifted (none at all, where no leg was called). `turns` may be of
/// any visits; by cow.
std::vector<StillLame> lame_and_not_lifted(const VisitRow& visit,
                                           const std::vector<TurnRow>& turns);

}  // namespace evenclaw
