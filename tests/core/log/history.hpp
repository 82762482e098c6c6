// Seeded histories of several devices that write about one herd without always hearing of each
// other, with the faults a log must survive.
#pragma once

#include <cstdint>
#include <vector>

#include "core/base/id.hpp"
#include "core/log/entry.hpp"

namespace evenclaw {

/// All entries that the devices of a history wrote, in the order they wrote them. Among them: a
/// clock that jumps ten years, visits opened on two devices, cows without a number met twice, feet
/// called twice, corrections (also of one entry on two devices, and in a ring), unions and their
/// taking back, redactions, kinds and versions this program does not know, and one id with
/// different bytes.
struct History {
  HerdId herd;
  std::vector<Entry> entries;
};

History make_history(std::uint64_t seed, int length);

}  // namespace evenclaw
