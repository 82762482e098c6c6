// The number in an animal's electronic tag, as a reader gives it (ISO 11784, ISO 11785).
#pragma once

#include <cstdint>
#include <span>
#include <string>
#include <string_view>

#include "core/base/result.hpp"

namespace evenclaw {

/// Who gave the number, which the first three digits tell.
enum class ElectronicKind {
  national,  // a country
  of_maker,  // whoever made the tag: no two alike only as far as makers kept to that
  test       // nobody: it is for trying readers out
};

/// A range of first three digits, with where that is from and how sure it is.
struct CodeRange {
  std::int32_t first;
  std::int32_t last;
  ElectronicKind kind;
  std::string_view source;
};

/// Every range, in order, without gap from 0 to 999.
std::span<const CodeRange> all_code_ranges();

/// Three digits of country or maker and at most 38 bits: nothing else fits into a tag.
struct ElectronicNumber {
  std::int32_t country = 0;
  std::int64_t animal = 0;

  friend bool operator==(const ElectronicNumber&, const ElectronicNumber&) = default;
};

/// The greatest number that 38 bits hold.
inline constexpr std::int64_t greatest_animal_number = 274'877'906'943;

/// Whether it is written as one: 15 digits, or 16 hexadecimal ones with a letter among them, once
/// blanks and hyphens are left out. It may still be none.
bool is_written_as_electronic(std::string_view text);

/// Reads 15 digits, blanks and hyphens between them not counting; or the 64 bits of the tag as 16
/// hexadecimal digits, bit 1 (said for animals) first. Fault "electronic-number-unreadable" with
/// the column of what is wrong: another count of digits, a number more than 38 bits hold, a first
/// three that are no country, no maker and no test, bits that are not of an animal.
/// The printed number of an ear tag is never made into one: a British herd mark above 274877 does
/// not fit, so a tag and the number in it are a pair somebody has to tell.
Result<ElectronicNumber> electronic_number(std::string_view text);

/// The 15 digits.
std::string to_text(const ElectronicNumber& number);

/// The 16 hexadecimal digits of the tag, with no more said in the other bits than that it is an
/// animal's.
std::string hex_of(const ElectronicNumber& number);

ElectronicKind kind_of(const ElectronicNumber& number);

}  // namespace evenclaw
