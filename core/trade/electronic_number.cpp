#include "core/trade/electronic_number.hpp"

#include <algorithm>
#include <cstddef>
#include <utility>
#include <vector>

#include "core/base/ascii.hpp"
#include "core/base/hex.hpp"
#include "core/trade/country.hpp"
#include "core/trade/typed_code.hpp"

namespace evenclaw {

namespace {

constexpr std::size_t digits_of_country = 3;
constexpr std::size_t digits_in_all = 15;
constexpr std::size_t hex_digits = 16;
constexpr int bits_of_animal = 38;
constexpr std::uint64_t animal_flag = std::uint64_t{1} << 63;
constexpr std::uint64_t country_bits = 0x3ff;

constexpr std::int32_t greatest_code = 999;

constexpr CodeRange code_ranges[] = {
    {0, 899, ElectronicKind::national,
     "ISO 3166-1 numbers, and 899 for Northern Ireland (Regulation (EU) 2021/520, article 12)"},
    {900, 998, ElectronicKind::of_maker,
     "from memory, not read in the standard; 972 was seen as the code of a maker"},
    {999, greatest_code, ElectronicKind::test, "from memory, not read in the standard"}};

bool is_hex(std::string_view text) {
  return text.size() == hex_digits && std::all_of(text.begin(), text.end(), [](char c) {
           return hex_value(c, HexCase::either) >= 0;
         });
}

bool all_digits(std::string_view text) {
  return std::all_of(text.begin(), text.end(), is_digit);
}

Fault unreadable(std::string message, std::string_view text, std::size_t place,
                 std::string remedy) {
  return {.slug = "electronic-number-unreadable",
          .message = std::move(message),
          .token = std::string(text),
          .column = static_cast<int>(place) + 1,
          .remedy = std::move(remedy)};
}

std::int64_t value_of(std::string_view digits) {
  std::int64_t value = 0;
  for (const char digit : digits) value = value * 10 + (digit - '0');
  return value;
}

std::string padded(std::int64_t value, std::size_t width) {
  const std::string digits = std::to_string(value);
  return std::string(width - std::min(width, digits.size()), '0') + digits;
}

Result<ElectronicNumber> checked(ElectronicNumber number, std::string_view text,
                                 std::size_t place_of_animal) {
  if (number.animal > greatest_animal_number) {
    return unreadable(
        "The last twelve digits are more than an electronic tag can hold.", text, place_of_animal,
        "Read her again; what is printed on an ear tag need not be the number in it.");
  }
  const bool is_known =
      kind_of(number) != ElectronicKind::national || country_of_number(number.country) != nullptr;
  if (!is_known) {
    return unreadable("It begins with " + padded(number.country, digits_of_country) +
                          ", which is the number of no country and of no maker.",
                      text, 0, "Read her again.");
  }
  return number;
}

Result<ElectronicNumber> from_bits(std::string_view hex, std::string_view text) {
  std::uint64_t bits = 0;
  for (const char c : hex)
    bits = (bits << 4) | static_cast<std::uint64_t>(hex_value(c, HexCase::either));
  if ((bits & animal_flag) == 0) {
    return unreadable("Its first bit says that it is not the number of an animal.", text, 0,
                      "Write the 15 digits the reader shows.");
  }
  ElectronicNumber number;
  number.country = static_cast<std::int32_t>((bits >> bits_of_animal) & country_bits);
  number.animal = static_cast<std::int64_t>(bits & ((std::uint64_t{1} << bits_of_animal) - 1));
  if (number.country > greatest_code) {
    return unreadable("Its country is beyond 999.", text, 0, "Read her again.");
  }
  return checked(number, text, 0);
}

}  // namespace

bool is_written_as_electronic(std::string_view text) {
  const std::string digits = typed_code(text, "-").characters;
  if (digits.size() == digits_in_all) return all_digits(digits);
  return is_hex(digits) && !all_digits(digits);
}

Result<ElectronicNumber> electronic_number(std::string_view text) {
  const TypedCode found = typed_code(text, "-");
  if (is_hex(found.characters)) return from_bits(found.characters, text);
  const auto wrong = std::find_if_not(found.characters.begin(), found.characters.end(), is_digit);
  if (wrong != found.characters.end()) {
    const std::size_t place =
        found.places[static_cast<std::size_t>(wrong - found.characters.begin())];
    return unreadable(std::string("\"") + text[place] + "\" is no digit.", text, place,
                      "Write the 15 digits the reader shows.");
  }
  if (found.characters.size() != digits_in_all) {
    return unreadable(
        "It has " + std::to_string(found.characters.size()) + " digits instead of 15.", text, 0,
        "Write the 15 digits the reader shows, zeros and all.");
  }
  const std::string_view digits = found.characters;
  ElectronicNumber number;
  number.country = static_cast<std::int32_t>(value_of(digits.substr(0, digits_of_country)));
  number.animal = value_of(digits.substr(digits_of_country));
  return checked(number, text, found.places[digits_of_country]);
}

std::string to_text(const ElectronicNumber& number) {
  return padded(number.country, digits_of_country) +
         padded(number.animal, digits_in_all - digits_of_country);
}

std::string hex_of(const ElectronicNumber& number) {
  const std::uint64_t bits = animal_flag |
                             (static_cast<std::uint64_t>(number.country) << bits_of_animal) |
                             static_cast<std::uint64_t>(number.animal);
  constexpr std::string_view hex = "0123456789abcdef";
  std::string text;
  for (int shift = 60; shift >= 0; shift -= 4) text += hex[(bits >> shift) & 0xf];
  return text;
}

std::span<const CodeRange> all_code_ranges() {
  return code_ranges;
}

ElectronicKind kind_of(const ElectronicNumber& number) {
  const auto* const range =
      std::find_if(std::begin(code_ranges), std::end(code_ranges), [&](const CodeRange& row) {
        return row.first <= number.country && number.country <= row.last;
      });
  return range == std::end(code_ranges) ? ElectronicKind::test : range->kind;
}

}  // namespace evenclaw
