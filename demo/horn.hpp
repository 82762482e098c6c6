// What happens to the horn of one claw in a week, and what a trim or a block does to it.
#pragma once

#include "core/base/random.hpp"
#include "demo/episode.hpp"
#include "demo/foot_state.hpp"

namespace evenclaw::demo {

/// A spot of a claw in one week.
struct HornWeek {
  int cow = 0;
  int week = 0;
  Foot foot = Foot::lh;
  Claw claw = Claw::outside;
  HornSpot spot = HornSpot::sole;
  bool is_unloaded = false;  // the partner carries a block
};

/// Rates times this for the claws of a foot: most lesions lie on the outside claw of a hind foot
/// and the inside one of a front foot.
double rate_of_claw(Foot foot, Claw claw);

/// Slight, in its early form.
void begin_lesion(HornState& state, const HornWeek& week, Episodes& episodes);

/// A lesion that is there gets worse, turns into the late form or heals; episodes are kept.
void pass_week(HornState& state, const HornWeek& week, RandomStream& draws, Episodes& episodes);

/// She was trimmed and the lesion was found: a late form heals as in the trials from now on.
/// Nothing changes where treatment leaves the state as it is.
void trim_lesion(HornState& state, bool treatment_resets);

}  // namespace evenclaw::demo
