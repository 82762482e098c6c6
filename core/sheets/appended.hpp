// Parts of a page are put one behind the other.
#pragma once

#include <iterator>
#include <utility>
#include <vector>

#include "core/paper/document.hpp"

namespace evenclaw {

inline void append(std::vector<Block>& blocks, std::vector<Block> more) {
  std::move(more.begin(), more.end(), std::back_inserter(blocks));
}

}  // namespace evenclaw
