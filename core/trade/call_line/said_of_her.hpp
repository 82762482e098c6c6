// An act said of the cow that may be one with an act said of her before.
#pragma once

#include <cstddef>
#include <vector>

#include "core/trade/action.hpp"

namespace evenclaw {

/// How many of hers it may be one with. A withdrawal told again after another medicine is that
/// one's, and so one with none that was told before it.
std::size_t count_of_same_of_her(const std::vector<Action>& actions, const Action& said);

/// Completes the one it is one with, or comes after all.
void add_or_complete_of_her(std::vector<Action>& actions, const Action& said);

}  // namespace evenclaw
