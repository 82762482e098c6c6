// "Her other back": which foot that is.
#pragma once

#include <optional>

#include "core/trade/call_line/turn_clause.hpp"

namespace evenclaw {

/// Of the two feet the one that was not spoken of yet; when both were, the one that is not spoken
/// of now. Nothing when that leaves none or both.
std::optional<Foot> other_foot_named(const TurnDraft& draft, const OtherFootNamed& said);

}  // namespace evenclaw
