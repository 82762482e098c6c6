// One cow in the crush: what the caller sees of her feet, what is done, and what that does to them.
#pragma once

#include <cstdint>

#include "core/base/random.hpp"
#include "demo/called.hpp"
#include "demo/caller.hpp"
#include "demo/complication.hpp"
#include "demo/cow.hpp"
#include "demo/look.hpp"

namespace evenclaw::demo {

/// Why she is brought in.
struct Coming {
  int number = 0;
  Reason reason = Reason::routine;
};

/// What holds for all cows of a visit.
struct AtCrush {
  const Caller& caller;
  const Complications& complications;
  int week = 0;
  double years = 0;  // since the business began
  FootSet todays_feet = four_feet;
  std::int32_t visit = 0;
};

/// Her feet and diary are changed as by what was done; looks are kept.
CalledTurn stand_in_crush(Cow& cow, const Coming& coming, const AtCrush& at, RandomStream& draws,
                          Looks& looks);

}  // namespace evenclaw::demo
