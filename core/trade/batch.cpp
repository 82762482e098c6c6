#include "core/trade/batch.hpp"

#include <algorithm>

namespace evenclaw {

std::int32_t Batch::together() const {
  return std::max(0, counted - static_cast<std::int32_t>(apart.size()));
}

}  // namespace evenclaw
