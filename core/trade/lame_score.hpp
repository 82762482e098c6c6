// From which mobility score on a cow is called lame.
#pragma once

#include "core/trade/mobility.hpp"

namespace evenclaw {

/// From two above the best score of its scale on: AHDB mobility score (0 to 3) calls 2 lame, and 3
/// of 5 likewise. False when no score was said.
bool is_lame_score(const MobilitySaid& said);

/// The best of its scale: she walks sound.
bool is_best_score(const MobilitySaid& said);

/// The best score of the scale of one that was said.
MobilitySaid best_score_beside(const MobilitySaid& said);

}  // namespace evenclaw
