#include "core/trade/call_line/lookalike.hpp"

#include <algorithm>
#include <iterator>

#include "core/base/ascii.hpp"

namespace evenclaw {

namespace {

struct Lookalike {
  std::string_view letter;  // two bytes of UTF-8
  char latin;
};

// Shapes as they are drawn in the usual fonts; from memory.
constexpr Lookalike lookalikes[] = {
    {"а", 'a'}, {"е", 'e'}, {"о", 'o'}, {"р", 'p'}, {"с", 'c'}, {"у", 'y'}, {"х", 'x'}, {"і", 'i'},
    {"ѕ", 's'}, {"ј", 'j'}, {"А", 'A'}, {"В", 'B'}, {"Е", 'E'}, {"К", 'K'}, {"М", 'M'}, {"Н", 'H'},
    {"О", 'O'}, {"Р", 'P'}, {"С", 'C'}, {"Т", 'T'}, {"У", 'Y'}, {"Х", 'X'}, {"І", 'I'}, {"Ѕ", 'S'},
    {"Α", 'A'}, {"Β", 'B'}, {"Ε", 'E'}, {"Ζ", 'Z'}, {"Η", 'H'}, {"Ι", 'I'}, {"Κ", 'K'}, {"Μ", 'M'},
    {"Ν", 'N'}, {"Ο", 'O'}, {"Ρ", 'P'}, {"Τ", 'T'}, {"Υ", 'Y'}, {"Χ", 'X'}, {"ο", 'o'}, {"ν", 'v'}};

bool is_of_ascii(char c) {
  return static_cast<unsigned char>(c) < 0x80;
}

/// '\0' for a letter that looks like no digit.
char as_digit(char c) {
  if (is_digit(c)) return c;
  if (c == 'l' || c == 'I') return '1';
  return c == 'O' || c == 'o' ? '0' : '\0';
}

}  // namespace

std::string in_latin_letters(std::string_view word) {
  constexpr std::size_t letter_bytes = 2;
  std::string latin;
  bool any = false;
  for (std::size_t at = 0; at < word.size();) {
    if (is_of_ascii(word[at])) {
      latin += word[at++];
      continue;
    }
    const auto like = std::find_if(
        std::begin(lookalikes), std::end(lookalikes),
        [&](const Lookalike& each) { return word.substr(at, letter_bytes) == each.letter; });
    if (like == std::end(lookalikes)) return {};
    latin += like->latin;
    any = true;
    at += letter_bytes;
  }
  return any ? latin : std::string();
}

std::string in_digits(std::string_view word) {
  std::string digits;
  for (const char c : word) {
    const char digit = as_digit(c);
    if (digit == '\0') return {};
    digits += digit;
  }
  return digits == word ? std::string() : digits;
}

std::string number_again(std::string_view said) {
  const std::string digits = in_digits(said);
  return "say the number again" + (digits.empty() ? digits : ", " + digits + " if that is meant");
}

}  // namespace evenclaw
