// "416 walks sound" and nothing else: her turn, or news of a cow that was seen walking?
#pragma once

#include "core/trade/call_line/line.hpp"
#include "core/trade/turn.hpp"

namespace evenclaw {

/// The cow of a line that gives a sure number and says that she walks sound, and nothing else; null
/// for any other line.
const CowSaid* says_only_that_she_walks(const Line& line);

/// Nothing else was said of her: no foot, no act, no reason.
bool says_only_how_she_walks(const Turn& turn);

/// Only how she walks or has to be handled was said: perhaps she was not in the crush at all.
bool says_nothing_of_her_feet(const Turn& turn);

}  // namespace evenclaw
