// The countries of ear tags and electronic numbers: their number, and the letters on tags.
#pragma once

#include <cstdint>
#include <span>
#include <string_view>

namespace evenclaw {

/// Where a row is from.
enum class CodeSource { iso_3166, eu_2021_520, uk_tags };

/// Seen in each of the sources named; none is from memory.
struct Country {
  std::int32_t number;           // as electronic numbers begin, ISO 3166-1; 899 is no ISO number
  std::string_view iso_letters;  // two letters of ISO 3166-1
  std::string_view on_tags;      // as printed on an ear tag: EL for Greece, UK, XI
  CodeSource source;
};

/// Every country, by number.
std::span<const Country> all_countries();

/// Null where no country has that number: 900 and above never have one.
const Country* country_of_number(std::int32_t number);

/// By the letters on tags or those of ISO 3166-1, in capitals; null for others.
const Country* country_of_letters(std::string_view letters);

/// The source in words.
std::string_view told_of(CodeSource source);

}  // namespace evenclaw
