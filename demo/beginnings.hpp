// Which lesion begins on a cow in a week: one draw decides for all her feet at once.
#pragma once

#include "core/base/random.hpp"
#include "demo/cow.hpp"
#include "demo/episode.hpp"
#include "demo/farm.hpp"

namespace evenclaw::demo {

/// What holds for all cows of a herd in one week.
struct HerdWeek {
  int week = 0;
  Pressure pressure;
  double infection = 0;  // chance of catching dermatitis: chance_of_infection()
};

/// At most one lesion begins on a cow in a week. Each spot of each foot has its rate: of claw, cow,
/// lactation, stage and barn; a spot that has its lesion already gets no second one. Episodes are
/// kept.
void perhaps_begin(Cow& cow, const HerdWeek& herd, Episodes& episodes);

}  // namespace evenclaw::demo
