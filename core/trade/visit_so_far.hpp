// What was called of the other cows of a visit, as far as a rule looks at a whole day.
#pragma once

#include "core/trade/turn.hpp"

namespace evenclaw {

/// Counts over the cows of this visit that were let out before the one in the crush; none of them
/// is she. What shows how one person trims is counted for the caller of her turn alone.
struct VisitSoFar {
  int feet_bled = 0;             // feet on which her caller drew blood
  int cows_with_thin_soles = 0;  // called by her caller
  int cows_with_sores = 0;       // sore mouth or blisters, whoever called

  friend bool operator==(const VisitSoFar&, const VisitSoFar&) = default;
};

/// Counts a turn of another cow in. `same_caller`: her caller called that one too.
void count_in(VisitSoFar& so_far, const Turn& turn, bool same_caller);

/// On how many feet of the turn that lesion was called.
int feet_with(const Turn& turn, Lesion lesion);

/// The act, or the sign that is said like one, was called of her or of one of her feet.
bool was_called(const Turn& turn, ActionKind kind);

}  // namespace evenclaw
