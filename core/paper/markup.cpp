#include "core/paper/markup.hpp"

#include <cmath>
#include <cstddef>

#include "core/base/ascii.hpp"
#include "core/base/text.hpp"

namespace evenclaw {

namespace {

// Far beyond any page; keeps the conversion to a whole number defined.
constexpr double largest_length = 1e9;

constexpr std::size_t longest_word = 14;  // "haemorrhage", "interdigital" are no longer
constexpr std::size_t longest_part = 10;

bool is_c1_control(std::string_view text, std::size_t at) {
  // U+0080 to U+009F, two bytes in UTF-8: some terminals obey them.
  return static_cast<unsigned char>(text[at]) == 0xC2 && at + 1 < text.size() &&
         static_cast<unsigned char>(text[at + 1]) < 0xA0;
}

void add_escaped(std::string& safe, char letter) {
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

bool is_of_a_word(char letter) {
  const bool is_ascii = static_cast<unsigned char>(letter) < 0x80;
  return !is_ascii || is_digit(letter) || is_small_letter(letter) || is_capital(letter);
}

/// With a place to break behind every `part` characters.
void add_in_parts(std::string& safe, std::string_view word, std::size_t part) {
  std::size_t characters = 0;
  for (const char letter : word) {
    const bool goes_on = (static_cast<unsigned char>(letter) & 0xC0U) == 0x80U;
    if (!goes_on && characters++ == part) {
      safe += "<wbr>";
      characters = 1;
    }
    safe += letter;
  }
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
  for (const char letter : printable(text)) add_escaped(safe, letter);
  return safe;
}

std::string escaped_prose(std::string_view text) {
  const std::string shown = printable(text);
  std::string safe;
  for (std::size_t at = 0; at < shown.size();) {
    std::size_t end = at;
    while (end < shown.size() && is_of_a_word(shown[end])) ++end;
    const std::string_view word = std::string_view(shown).substr(at, end - at);
    add_in_parts(safe, word, character_count(word) > longest_word ? longest_part : word.size());
    if (end < shown.size()) add_escaped(safe, shown[end++]);
    at = end;
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
