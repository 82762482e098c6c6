// Which stream of random draws belongs to what, so that a farm more or a cow more changes no other.
#pragma once

#include <cstdint>

#include "core/base/random.hpp"

namespace evenclaw::demo {

enum class DrawnFor : std::uint8_t { farm, cow_life, cow_feet, crush, changes, ids, claw_table };

/// `farm` below 2^24. The same numbers whenever it is asked for the same.
inline RandomStream stream_for(std::uint64_t seed, DrawnFor what, int farm, std::uint32_t index) {
  const std::uint64_t stream = static_cast<std::uint64_t>(farm) << 40U |
                               static_cast<std::uint64_t>(what) << 32U | std::uint64_t{index};
  return {seed, stream};
}

}  // namespace evenclaw::demo
