// What nobody called of a finding and a person can still say.
#pragma once

#include "core/trade/turn.hpp"

namespace evenclaw {

/// Nobody said where it sits, and its name does not say it either: a foul or a growth sits between
/// the claws, heel horn erosion at the heel, a toe or heel ulcer or a wall crack where it is called
/// after, and a double sole under the whole sole (common practice, no source). Of shapes and of
/// what has no code nobody is asked.
bool place_is_missing(const Finding& finding);

/// Nobody said on which claw, and the lesion is one of a single claw. Heel horn erosion is seen on
/// both heels of a foot and is called for the foot (common practice, no source).
bool claw_is_missing(const Finding& finding);

/// Nobody said how bad, and that is asked: of DD the stage is asked instead, of shapes and of what
/// has no code neither (our judgement).
bool degree_is_missing(const Finding& finding);
bool stage_is_missing(const Finding& finding);

/// The foot was named, perhaps trimmed or not, and nothing else was said of it.
bool is_only_named(const FootCall& call);

}  // namespace evenclaw
