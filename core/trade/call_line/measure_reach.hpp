// How long or high a measure of a claw can be, so that a slip of the tongue or finger is noticed.
#pragma once

#include <optional>
#include <string_view>

#include "core/base/length.hpp"
#include "core/trade/call_line/open_item.hpp"
#include "core/trade/turn.hpp"

namespace evenclaw {

/// From `least` to `most`, both included; wide enough that no claw that walks is refused.
struct MeasureReach {
  MeasureKind kind;
  Length least;
  Length most;
  std::string_view source;  // of what claws measure; how far beyond is our judgement
};

const MeasureReach& reach_of(MeasureKind kind);

/// Why the length is none of this measure, with the one that a slip of a factor ten stands for
/// ("sole 60 mm": 6 mm); nothing when it can be.
std::optional<Refusal> out_of_reach(MeasureKind kind, Length length);

}  // namespace evenclaw
