// The entries of a log that count, as a list of their own.
#pragma once

#include <algorithm>
#include <vector>

#include "core/log/entry.hpp"
#include "core/log/standing.hpp"

namespace evenclaw {

/// Copied, by scope and in the total order of each; a correction stands at its own place.
inline std::vector<Entry> counting_among(const std::vector<Entry>& entries) {
  std::vector<Entry> counting;
  for (const Entry* entry : standing_among(entries).entries) counting.push_back(*entry);
  std::sort(counting.begin(), counting.end(), stands_before);
  return counting;
}

}  // namespace evenclaw
