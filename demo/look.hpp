// What was there at a look at a foot beside what was called of it: the truth about callers.
#pragma once

#include <cstdint>
#include <vector>

#include "core/trade/dd_stage.hpp"
#include "core/trade/foot.hpp"
#include "core/trade/lesion.hpp"

namespace evenclaw::demo {

/// A lesion that was there when the foot was lifted, or was called where none was.
struct Look {
  std::int32_t visit = 0;  // which of the herd's visits, from 0
  int cow = 0;
  Foot foot = Foot::lh;
  Claw claw = Claw::none;
  Lesion lesion = Lesion::sh;
  Degree degree = Degree::not_called;   // as it was, of what has degrees
  DdStage stage = DdStage::not_called;  // as it was, of digital dermatitis
  bool was_there = true;
  bool was_called = false;
};

using Looks = std::vector<Look>;

}  // namespace evenclaw::demo
