#include "core/trade/national_tag.hpp"

#include <doctest/doctest.h>

#include <cstdint>
#include <string>

#include "core/base/random.hpp"
#include "core/trade/country.hpp"

namespace evenclaw::test {

namespace {

std::string stored(std::string_view typed) {
  const auto tag = national_tag(typed);
  return tag ? to_text(*tag) : tag.faults().front().slug;
}

int column_of_fault(std::string_view typed) {
  const auto tag = national_tag(typed);
  return tag ? 0 : tag.faults().front().column;
}

const Country& any_country(RandomStream& random) {
  const auto all = all_countries();
  return all[random.below(static_cast<std::uint32_t>(all.size()))];
}

}  // namespace

TEST_CASE("published British tags pass their check digit") {
  CHECK(stored("UK 123450 600001") == "UK123450600001");
  CHECK(stored("UK 123450 700002") == "UK123450700002");
  CHECK(stored("UK 123450 100003") == "UK123450100003");
  CHECK(stored("UK 284205 600015") == "UK284205600015");
  CHECK(stored("UK 284205 700016") == "UK284205700016");
  CHECK(stored("UK 284205 100017") == "UK284205100017");
  CHECK(stored("UK 230011 200123") == "UK230011200123");
}

TEST_CASE("a check digit that fits proves nothing: an unlikely tag passes") {
  CHECK(stored("UK 123456 789012") == "UK123456789012");
}

TEST_CASE("a check digit that does not fit is told with its place and the digit it would be") {
  const auto tag = national_tag("UK 123456 600001");
  REQUIRE_FALSE(tag);
  CHECK(tag.faults().front().slug == "tag-unreadable");
  CHECK(tag.faults().front().column == 11);
  CHECK(tag.faults().front().message == "Its check digit is 6, and of these digits it would be 1.");
}

TEST_CASE("a published Dutch tag is read with its blanks") {
  CHECK(stored("NL 6802 5082 9") == "NL680250829");
}

TEST_CASE("the published American number is read in its form with letters") {
  CHECK(stored("USA0003123456789") == "US003123456789");
}

TEST_CASE("Greece is EL and Northern Ireland XI on a tag") {
  CHECK(stored("EL 123456789") == "EL123456789");
  CHECK(stored("GR123456789") == "EL123456789");
  CHECK(stored("XI 123456789012") == "XI123456789012");
}

TEST_CASE("small letters, dots and hyphens do not matter") {
  CHECK(stored("de 03.123-12345") == "DE0312312345");
}

TEST_CASE("leading zeros make no other tag") {
  CHECK(national_tag("DE 0312312345").value() == national_tag("DE 312312345").value());
  CHECK_FALSE(national_tag("DE 312312345").value() == national_tag("AT 312312345").value());
}

TEST_CASE("what is wrong with a tag is told with its place") {
  CHECK(column_of_fault("123450 600001") == 1);
  CHECK(column_of_fault("QQ 123") == 1);
  CHECK(column_of_fault("DE 12A4") == 6);
  CHECK(column_of_fault("DE") == 1);
  CHECK(column_of_fault("DE 1234567890123") == 4);
  CHECK(column_of_fault("UK 12345 600001") == 4);
  CHECK(column_of_fault("") == 1);
}

TEST_CASE("a tag that is stored reads as the same tag, for people as well") {
  RandomStream random(20261126, 1);
  for (int i = 0; i < 500; ++i) {
    const auto& country = any_country(random);
    std::string digits;
    for (int at = 0; at < 12; ++at) digits += static_cast<char>('0' + random.below(10));
    if (country.on_tags == "UK") digits[6] = uk_check_digit(digits.substr(0, 6), digits.substr(7));
    const auto tag = national_tag(std::string(country.on_tags) + digits);
    CAPTURE(digits);
    REQUIRE(tag);
    CHECK(national_tag(to_text(*tag)).value() == *tag);
    CHECK(national_tag(spoken(*tag)).value() == *tag);
    CHECK(to_text(national_tag(to_text(*tag)).value()) == to_text(*tag));
  }
}

TEST_CASE("the check digit finds most slips of one digit") {
  RandomStream random(20261126, 2);
  int found = 0;
  for (int i = 0; i < 2000; ++i) {
    std::string digits;
    digits += static_cast<char>('1' + random.below(8));
    for (int at = 1; at < 12; ++at) digits += static_cast<char>('0' + random.below(10));
    digits[6] = uk_check_digit(digits.substr(0, 6), digits.substr(7));
    char& wrong = digits[1 + random.below(11)];
    wrong = static_cast<char>('0' + (wrong - '0' + 1 + static_cast<int>(random.below(9))) % 10);
    if (!national_tag("UK" + digits)) ++found;
  }
  // 94.2 % of 20,000 was measured with this rule before.
  CHECK(found > 1800);
  CHECK(found < 2000);
}

TEST_CASE("a tag of Northern Ireland that begins with 9 is not held to the British rule") {
  CHECK(national_tag("UK 912345 600001"));
}

}  // namespace evenclaw::test
