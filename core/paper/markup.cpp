#include "core/paper/markup.hpp"

#include <cmath>

#include "core/base/text.hpp"

namespace evenclaw {

namespace {

// Far beyond any page; keeps the conversion to a whole number defined.
constexpr double largest_length = 1e9;

bool is_c1_control(std::string_view text, std::size_t at) {
  // U+0080 to U+009F, two bytes in UTF-8: some terminals obey them.
  return static_cast<unsigned char>(text[at]) == 0xC2 && at + 1 < text.size() &&
         static_cast<unsigned char>(text[at + 1]) < 0xA0;
}

}  // namespace

std::string printable(std::string_view text) {
  const std::string valid = valid_utf8(text);
  std::string shown;
  shown.reserve(valid.size());
  for (std::size_t at = 0; at < valid.size(); ++at) {
    const auto byte = static_cast<unsigned char>(valid[at]);
    if (byte == '\n' || byte == '\t' || byte == '\r') {
      shown += ' ';
    } else if (is_c1_control(valid, at)) {
      ++at;
    } else if (byte >= 0x20 && byte != 0x7F) {
      shown += valid[at];
    }
  }
  return shown;
}

std::string escaped(std::string_view text) {
  std::string safe;
  safe.reserve(text.size());
  for (const char letter : printable(text)) {
    switch (letter) {
      case '&':
        safe += "&amp;";
        break;
      case '<':
        safe += "&lt;";
        break;
      case '>':
        safe += "&gt;";
        break;
      case '"':
        safe += "&quot;";
        break;
      case '\'':
        safe += "&#39;";
        break;
      default:
        safe += letter;
    }
  }
  return safe;
}

std::string decimal(double value) {
  const bool negative = value < 0;
  const double magnitude = negative ? -value : value;
  const double size = magnitude < largest_length ? magnitude : largest_length;
  const auto hundredths = std::llround(size * 100);
  std::string digits = std::to_string(hundredths / 100);
  const long long rest = hundredths % 100;
  if (rest != 0) {
    digits += '.';
    digits += static_cast<char>('0' + rest / 10);
    if (rest % 10 != 0) digits += static_cast<char>('0' + rest % 10);
  }
  return negative && hundredths != 0 ? '-' + digits : digits;
}

}  // namespace evenclaw
