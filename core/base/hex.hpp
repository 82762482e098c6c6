// Single hexadecimal digits, shared by ids and digests.
#pragma once

#include <cstdint>
#include <string>

namespace evenclaw {

enum class HexCase { lower_only, either };

/// 0 to 15, or -1 when the character is no hex digit of the allowed case.
constexpr int hex_value(char digit, HexCase allowed) {
  if (digit >= '0' && digit <= '9') return digit - '0';
  if (digit >= 'a' && digit <= 'f') return digit - 'a' + 10;
  if (allowed == HexCase::either && digit >= 'A' && digit <= 'F') return digit - 'A' + 10;
  return -1;
}

/// Appends the byte as two lower-case digits.
inline void append_hex(std::string& out, std::uint8_t byte) {
  constexpr char digits[] = "0123456789abcdef";
  out += digits[byte >> 4U];
  out += digits[byte & 0x0FU];
}

}  // namespace evenclaw
