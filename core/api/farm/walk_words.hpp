// What a farm walk measured, in words.
#pragma once

#include <string>

#include "core/trade/farm_walk.hpp"

namespace evenclaw {

/// "cubicle width 1.15 m, 10 looked at"; "grip slippery on 3 of 10"; "grip: not looked at".
std::string measured_words(const WalkMeasured& measured);
std::string measured_words(const FarmWalkRow& row);

/// "compare: 3.0 to 3.7 m (Cook 2012, Vet J 193:669)": what stands beside the value, no verdict.
std::string compared_words(WalkMeasure measure);

}  // namespace evenclaw
