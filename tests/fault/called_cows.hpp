// What is called of invented cows, always the same for a seed, for it is given again after a fault.
#pragma once

#include <array>
#include <cstdint>
#include <string>
#include <vector>

#include "core/base/random.hpp"

namespace evenclaw::test {

/// Lines of one cow, of which the last lets her out.
inline std::vector<std::string> called_of_cow(std::uint64_t seed, int cow) {
  static const std::array<std::vector<std::string>, 6> said = {{
      {"routine; nothing found"},
      {"routine", "rest fine"},
      {"lame LH", "LH outside white line abscess heel, bad; block on inside; see again 28d"},
      {"routine", "RH DD M2 behind; spray; wrap on", "rest fine"},
      {"routine", "both hinds heel horn erosion, slight", "rest fine"},
      {"recheck", "LH outside sole ulcer middle, plain; block on inside", "rest fine"},
  }};
  RandomStream random(seed, static_cast<std::uint64_t>(cow));
  std::vector<std::string> lines = said[random.below(said.size())];
  lines.front() = std::to_string(cow) + " " + lines.front();
  lines.emplace_back("done");
  return lines;
}

}  // namespace evenclaw::test
