#include "core/base/text.hpp"

#include <array>
#include <cstddef>
#include <cstdint>

namespace evenclaw {

namespace {

constexpr std::string_view replacement_character = "\xEF\xBF\xBD";

std::uint8_t byte_at(std::string_view text, std::size_t at) {
  return at < text.size() ? static_cast<std::uint8_t>(text[at]) : std::uint8_t{0};
}

bool is_continuation(std::uint8_t byte) {
  return (byte & 0xC0U) == 0x80U;
}

// The second byte is where overlong forms, surrogates and code points beyond U+10FFFF show.
bool second_byte_fits(std::uint8_t lead, std::uint8_t second) {
  switch (lead) {
    case 0xE0:
      return second >= 0xA0 && second <= 0xBF;
    case 0xED:
      return second >= 0x80 && second <= 0x9F;
    case 0xF0:
      return second >= 0x90 && second <= 0xBF;
    case 0xF4:
      return second >= 0x80 && second <= 0x8F;
    default:
      return is_continuation(second);
  }
}

std::size_t length_promised_by(std::uint8_t lead) {
  if (lead < 0x80) return 1;
  if (lead >= 0xC2 && lead <= 0xDF) return 2;
  if (lead >= 0xE0 && lead <= 0xEF) return 3;
  if (lead >= 0xF0 && lead <= 0xF4) return 4;
  return 0;
}

// Bytes of the well-formed character at `at`, 0 when it is ill-formed.
std::size_t character_length(std::string_view text, std::size_t at) {
  const std::uint8_t lead = byte_at(text, at);
  const std::size_t length = length_promised_by(lead);
  if (length < 2) return length;
  if (at + length > text.size()) return 0;
  if (!second_byte_fits(lead, byte_at(text, at + 1))) return 0;
  for (std::size_t i = 2; i < length; ++i) {
    if (!is_continuation(byte_at(text, at + i))) return 0;
  }
  return length;
}

// In Latin Extended-A most capitals stand just before their small letter; the parity of the
// capital changes at three places, and three code points have no partner in the block.
std::uint32_t fold_extended_a(std::uint32_t code) {
  const bool even_is_capital =
      (code <= 0x137 && code != 0x130 && code != 0x131) || (code >= 0x14A && code <= 0x177);
  const bool odd_is_capital = (code >= 0x139 && code <= 0x148) || (code >= 0x179 && code <= 0x17E);
  if (code == 0x130) return 'i';
  if (code == 0x178) return 0xFF;
  if (even_is_capital && code % 2 == 0) return code + 1;
  if (odd_is_capital && code % 2 == 1) return code + 1;
  return code;
}

std::uint32_t fold_two_byte(std::uint32_t code) {
  constexpr std::uint32_t multiplication_sign = 0xD7;
  if (code >= 0xC0 && code <= 0xDE && code != multiplication_sign) return code + 0x20;
  if (code >= 0x100 && code <= 0x17F) return fold_extended_a(code);
  return code;
}

void append_below_0x800(std::string& out, std::uint32_t code) {
  if (code < 0x80) {
    out += static_cast<char>(code);
    return;
  }
  out += static_cast<char>(0xC0U | (code >> 6U));
  out += static_cast<char>(0x80U | (code & 0x3FU));
}

bool is_space(char c) {
  return c == ' ' || c == '\t' || c == '\r' || c == '\n';
}

}  // namespace

bool is_utf8(std::string_view text) {
  std::size_t at = 0;
  while (at < text.size()) {
    const std::size_t length = character_length(text, at);
    if (length == 0) return false;
    at += length;
  }
  return true;
}

std::string valid_utf8(std::string_view text) {
  std::string out;
  out.reserve(text.size());
  std::size_t at = 0;
  while (at < text.size()) {
    const std::size_t length = character_length(text, at);
    out += length == 0 ? replacement_character : text.substr(at, length);
    at += length == 0 ? 1 : length;
  }
  return out;
}

bool is_one_plain_line(std::string_view text) {
  if (!is_utf8(text)) return false;
  for (std::size_t at = 0; at < text.size(); ++at) {
    const std::uint8_t byte = byte_at(text, at);
    const bool is_latin_1_control = byte == 0xC2 && byte_at(text, at + 1) < 0xA0;
    if (byte < 0x20 || byte == 0x7F || is_latin_1_control) return false;
  }
  return true;
}

std::string fold_case(std::string_view text) {
  std::string out;
  out.reserve(text.size());
  std::size_t at = 0;
  while (at < text.size()) {
    const std::size_t length = character_length(text, at);
    const std::uint8_t lead = byte_at(text, at);
    if (length == 2) {
      append_below_0x800(out,
                         fold_two_byte((lead & 0x1FU) << 6U | (byte_at(text, at + 1) & 0x3FU)));
      at += 2;
      continue;
    }
    const bool is_ascii_capital = lead >= 'A' && lead <= 'Z';
    out += static_cast<char>(is_ascii_capital ? lead + ('a' - 'A') : lead);
    at += 1;
  }
  return out;
}

std::string_view trimmed(std::string_view text) {
  while (!text.empty() && is_space(text.front())) text.remove_prefix(1);
  while (!text.empty() && is_space(text.back())) text.remove_suffix(1);
  return text;
}

std::size_t character_count(std::string_view text) {
  std::size_t count = 0;
  for (const char c : text) {
    if (!is_continuation(static_cast<std::uint8_t>(c))) ++count;
  }
  return count;
}

std::string shortened(std::string_view text, std::size_t max_characters) {
  std::size_t count = 0;
  for (std::size_t at = 0; at < text.size(); ++at) {
    if (is_continuation(byte_at(text, at))) continue;
    if (count == max_characters) return std::string(text.substr(0, at)) + "...";
    ++count;
  }
  return std::string(text);
}

std::optional<int> whole_number(std::string_view digits, std::size_t most_digits) {
  if (digits.empty() || digits.size() > most_digits) return std::nullopt;
  int number = 0;
  for (const char c : digits) {
    if (c < '0' || c > '9') return std::nullopt;
    number = number * 10 + (c - '0');
  }
  return number;
}

}  // namespace evenclaw
