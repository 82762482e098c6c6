// Digits and letters of ASCII, told apart without a locale.
#pragma once

namespace evenclaw {

/// True for 0 to 9.
constexpr bool is_digit(char c) {
  return c >= '0' && c <= '9';
}

/// True for a to z.
constexpr bool is_small_letter(char c) {
  return c >= 'a' && c <= 'z';
}

/// True for A to Z.
constexpr bool is_capital(char c) {
  return c >= 'A' && c <= 'Z';
}

/// The capital of a small letter; every other byte stays.
constexpr char capital(char c) {
  return is_small_letter(c) ? static_cast<char>(c - 'a' + 'A') : c;
}

}  // namespace evenclaw
