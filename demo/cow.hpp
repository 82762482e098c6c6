// An invented cow: her calvings, how long she stays, and what her feet are prone to.
#pragma once

#include <array>
#include <cstdint>
#include <vector>

#include "core/base/enum_words.hpp"
#include "core/base/random.hpp"
#include "core/trade/foot.hpp"
#include "demo/farm.hpp"
#include "demo/foot_state.hpp"

namespace evenclaw::demo {

enum class LeftBecause { not_left, end_of_lactation, lame };

/// Later than any week of a story.
inline constexpr int never = 1'000'000;

/// Weeks are counted from the first week of the herd's story; those before it are negative.
struct Cow {
  int number = 0;  // never given to another cow
  int born = 0;
  std::vector<int> calvings;  // the first one is the week she came into the herd
  int dry_from = 0;           // of this lactation; never when she is not to calve again
  int next_calving = 0;       // likewise
  int leaves = 0;             // the week after which she is gone, as far as is settled
  LeftBecause left = LeftBecause::not_left;
  double horn_frailty = 1;  // times the rate of other cows
  double skin_frailty = 1;
  std::array<FootState, 4> feet;
  int last_trim = -never;
  int recheck_from = never;  // the trimmer wants to see her again
  RandomStream life{0, 0};
  RandomStream steps{0, 0};  // what happens to her feet
};

/// A heifer that calves for the first time in `week`, with streams of draws of her own.
Cow first_calved(std::uint64_t seed, const Farm& farm, int number, int week);

/// Makes her calve in `week`: the next lactation, or the week in which she goes, is drawn.
void calve(Cow& cow, const Farm& farm, int week);

inline int lactation_of(const Cow& cow) {
  return static_cast<int>(cow.calvings.size());
}

inline bool is_dry(const Cow& cow, int week) {
  return week >= cow.dry_from;
}

inline int weeks_in_milk(const Cow& cow, int week) {
  return week - cow.calvings.back();
}

/// What lactation and stage do to the horn of her claws, and to catching dermatitis; with her own
/// frailty.
double horn_rate(const Cow& cow, int week);
double skin_rate(const Cow& cow, int week);

}  // namespace evenclaw::demo

namespace evenclaw {

template <>
struct EnumWords<demo::LeftBecause> {
  static constexpr EnumWord<demo::LeftBecause> table[] = {
      {demo::LeftBecause::not_left, "not_left"},
      {demo::LeftBecause::end_of_lactation, "end_of_lactation"},
      {demo::LeftBecause::lame, "lame"}};
};

}  // namespace evenclaw
