// Which labels are set smaller, on every kind of page alike.
#pragma once

#include <cstddef>
#include <string_view>

#include "core/base/text.hpp"

namespace evenclaw {

/// A label of more characters than a number with its mark of doubt has is set smaller, so that it
/// keeps to its column.
inline bool is_long_label(std::string_view label) {
  constexpr std::size_t longest_large_label = 6;
  return character_count(label) > longest_large_label;
}

}  // namespace evenclaw
