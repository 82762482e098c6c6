// Which labels are set smaller, on every kind of page alike.
#pragma once

#include <algorithm>
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

/// Several short numbers beside a box stand below each other where they must, so they are as large
/// as one: "116, 124 and 150". Any other long label is set smaller there too.
inline bool is_long_in_box(std::string_view label) {
  const auto is_digit = [](char c) { return c >= '0' && c <= '9'; };
  bool are_short = !label.empty() && is_digit(label.front());
  std::string_view last = label;
  for (std::size_t at = 0; at < label.size();) {
    const std::size_t end = std::min(label.find(' ', at), label.size());
    last = label.substr(at, end - at);
    are_short = are_short && !is_long_label(last);
    at = end + 1;
  }
  const bool is_number = std::any_of(last.begin(), last.end(), is_digit);
  return is_long_label(label) && !(are_short && is_number);
}

}  // namespace evenclaw
