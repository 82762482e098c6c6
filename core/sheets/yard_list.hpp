// The tick list of what is done before the trimmer leaves a yard.
#pragma once

#include <vector>

#include "core/paper/document.hpp"
#include "core/sheets/words.hpp"

namespace evenclaw {

/// One list with a box before each line, and quietly behind it where that comes from.
std::vector<Block> before_leaving(const Wording& wording = english_wording());

}  // namespace evenclaw
