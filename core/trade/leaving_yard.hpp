// What is done before the trimmer leaves a yard, so that he carries nothing to the next herd.
#pragma once

#include <span>
#include <string_view>

namespace evenclaw {

struct YardTask {
  std::string_view words;
  std::string_view source;
};

/// In the order in which it is done.
std::span<const YardTask> before_leaving_the_yard();

}  // namespace evenclaw
