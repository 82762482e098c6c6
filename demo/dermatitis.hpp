// Digital dermatitis of one foot through its stages, and how it spreads between cows.
#pragma once

#include "core/base/random.hpp"
#include "demo/episode.hpp"
#include "demo/foot_state.hpp"

namespace evenclaw::demo {

/// A foot in one week.
struct SkinWeek {
  int cow = 0;
  int week = 0;
  Foot foot = Foot::lh;
};

/// The chance a week of a hind foot at rate 1 when `share` of the herd's hind feet has it. Where it
/// does not spread, the share that makes no difference is put in its place.
double chance_of_infection(double share, bool spreads);

/// M0 to M4 or M1; nothing where it is there.
void infect(FootState& foot, const SkinWeek& week, RandomStream& draws, Episodes& episodes);

/// M1 to M2, M2 and M4.1 back to M4, M4 to M0 and the rest; nothing of M0. Episodes are kept.
void pass_week(FootState& foot, const SkinWeek& week, RandomStream& draws, Episodes& episodes);

/// A raw sore that is treated may close over to M3. Nothing changes where treatment leaves the
/// state as it is.
void treat_sore(FootState& foot, bool treatment_resets, RandomStream& draws);

constexpr bool is_infected(DdStage stage) {
  return stage != DdStage::m0;
}

constexpr bool is_raw(DdStage stage) {
  return stage == DdStage::m1 || stage == DdStage::m2 || stage == DdStage::m4_1;
}

}  // namespace evenclaw::demo
