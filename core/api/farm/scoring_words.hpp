// A mobility scoring in one line of words.
#pragma once

#include <string>

#include "core/trade/mobility_scoring.hpp"

namespace evenclaw {

/// "high yielders, scale 0 to 3, 41 of 60 present scored: 30 at 0, 8 at 1, 3 at 2, 0 at 3; 1 scored
/// twice". Without a share: that needs to be told of how many.
std::string scoring_words(const MobilityScoringRow& row);

}  // namespace evenclaw
