// Words of the tables that say one thing of a cow, where her news is told apart by its words.
#pragma once

#include <string_view>

namespace evenclaw {

/// "died" for "dead", and the like in every language; any other words as they are.
std::string_view alike_to(std::string_view words);

}  // namespace evenclaw
