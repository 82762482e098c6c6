// What was taken over from last time belongs to one foot of one cow: when either is put right, the
// other one's own last time stands in for it.
#pragma once

#include <string>
#include <vector>

#include "core/trade/call_line/known_of_her.hpp"
#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/turn_clause.hpp"

namespace evenclaw {

struct TakenAnew {
  TurnDraft draft;
  std::vector<std::string> told;  // what was taken now, or that nothing is known; to be shown
};

/// Whether anything of the turn was taken over from last time.
bool leans_on_last_time(const Turn& turn, const Language& language);

/// `draft` after the foot was put right in it; `before` is how it was until then. What the wrong
/// foot had from last time is gone, and the right one has what was found there. Where nothing is
/// known of that foot it is left open, with the words as said.
TakenAnew for_the_right_foot(const TurnDraft& before, TurnDraft draft, const KnownPast& past,
                             const Language& language);

/// The same of every foot, when the number of the cow was put right.
TakenAnew for_the_right_cow(TurnDraft draft, const KnownPast& wrong, const KnownPast& right,
                            const Language& language);

}  // namespace evenclaw
