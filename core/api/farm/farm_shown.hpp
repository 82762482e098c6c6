// What is on record of the farm itself, for whoever shows a herd or a cow.
#pragma once

#include <vector>

#include "core/base/id.hpp"
#include "core/base/result.hpp"
#include "core/ports/store.hpp"
#include "core/trade/farm_change.hpp"
#include "core/trade/farm_walk.hpp"
#include "core/trade/mobility_scoring.hpp"

namespace evenclaw {

/// Mobility scorings of a herd, newest first.
Result<std::vector<MobilityScoringRow>> scorings_of(Store& store, HerdId herd);

/// The scores of a cow and of all that are united with her, newest first. Scores under a number
/// that was nobody's when it was called are none of hers.
Result<std::vector<MobilityScoreRow>> scores_of(Store& store, HerdId herd, CowId cow);

/// What walks measured, the newest walk first, in the order in which it was said.
Result<std::vector<FarmWalkRow>> walks_of(Store& store, HerdId herd);

/// Changes by the day they were first told, newest first.
Result<std::vector<FarmChangeRow>> changes_of(Store& store, HerdId herd);

}  // namespace evenclaw
