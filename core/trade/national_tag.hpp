// The number on an official ear tag: letters of a country and the animal's digits.
#pragma once

#include <string>
#include <string_view>

#include "core/base/result.hpp"

namespace evenclaw {

/// As Regulation (EU) 2021/520 article 12 describes it, and the same elsewhere: a country and at
/// most twelve digits.
struct NationalTag {
  std::string country;  // as printed on tags: "DE", "EL", "UK", "XI"
  std::string digits;   // as given, leading zeros kept
};

/// The same animal: the same country, and digits that are alike up to leading zeros.
bool operator==(const NationalTag& a, const NationalTag& b);

/// Reads "UK 123450 600001", "NL 6802 5082 9", "de0312312345", "USA0003123456789": blanks, dots and
/// hyphens do not count. Fault "tag-unreadable" with the column of what is wrong: letters that
/// are no country, something that is no digit, none or more than twelve, a check digit that does
/// not fit.
/// Only British tags are checked by their check digit (a rule worked out from seven published
/// examples); it lets about one slip in twenty pass. Those of other countries are not known here.
/// Tags with letters among the digits, given until about 2000, are not read.
Result<NationalTag> national_tag(std::string_view text);

/// "UK123450600001": as it is stored; reading it gives the same tag.
std::string to_text(const NationalTag& tag);

/// "UK 123450 600001" for people.
std::string spoken(const NationalTag& tag);

/// The check digit (1 to 7) of a British tag: herd mark of six digits, animal of five. Twelve
/// digits are herd mark, check digit, animal.
char uk_check_digit(std::string_view herd_mark, std::string_view animal);

}  // namespace evenclaw
