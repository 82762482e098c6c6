// What is answered to news of a cow: what it closed, what it made, or that nothing came of it.
#pragma once

#include <string>
#include <vector>

#include "core/trade/follow_up.hpp"

namespace evenclaw {

/// "closed: wrap off right hind", "to do: still lame, look at her feet", "noted; ...".
std::string words_of_effect(News news, const std::vector<TaskClosed>& closes,
                            const std::vector<TaskMade>& makes, const CowPast& past);

}  // namespace evenclaw
