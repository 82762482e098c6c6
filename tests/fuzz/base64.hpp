// Bytes written as base64, as the kept inputs of the fuzz targets are.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace evenclaw::test {

/// The bytes, or nothing where a letter is none of base64 or the text breaks off.
inline std::optional<std::string> from_base64(std::string_view text) {
  constexpr std::string_view letters =
      "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
  constexpr std::size_t group = 4;
  if (text.empty() || text.size() % group != 0) return std::nullopt;
  const std::size_t padding = text.ends_with("==") ? 2 : text.ends_with("=") ? 1 : 0;
  text.remove_suffix(padding);
  std::string bytes;
  std::uint32_t bits = 0;
  int held = 0;
  for (const char letter : text) {
    const std::size_t value = letters.find(letter);
    if (value == std::string_view::npos) return std::nullopt;
    bits = (bits << 6 | static_cast<std::uint32_t>(value)) & 0xFFFFU;
    held += 6;
    if (held < 8) continue;
    held -= 8;
    bytes.push_back(static_cast<char>(bits >> held & 0xFFU));
  }
  return bytes;
}

}  // namespace evenclaw::test
