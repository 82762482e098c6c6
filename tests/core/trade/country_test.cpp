#include "core/trade/country.hpp"

#include <doctest/doctest.h>

#include <cstdint>
#include <set>
#include <string_view>

namespace evenclaw::test {

TEST_CASE("the countries that keep dairy cows here have the numbers that were collected") {
  CHECK(country_of_letters("AR")->number == 32);
  CHECK(country_of_letters("DE")->number == 276);
  CHECK(country_of_letters("DK")->number == 208);
  CHECK(country_of_letters("FR")->number == 250);
  CHECK(country_of_letters("IE")->number == 372);
  CHECK(country_of_letters("IN")->number == 356);
  CHECK(country_of_letters("NL")->number == 528);
  CHECK(country_of_letters("NZ")->number == 554);
  CHECK(country_of_letters("RS")->number == 688);
  CHECK(country_of_letters("US")->number == 840);
  CHECK(country_of_letters("ZA")->number == 710);
}

TEST_CASE("a country is found by the letters on tags and by those of ISO") {
  CHECK(country_of_letters("EL") == country_of_letters("GR"));
  CHECK(country_of_letters("UK") == country_of_letters("GB"));
  CHECK(country_of_number(826)->on_tags == "UK");
  CHECK(country_of_letters("QQ") == nullptr);
}

TEST_CASE("no number and no letters mean two countries, and none is a maker's") {
  std::set<std::int32_t> numbers;
  std::set<std::string_view> letters;
  for (const Country& row : all_countries()) {
    CHECK(numbers.insert(row.number).second);
    CHECK(letters.insert(row.on_tags).second);
    CHECK(row.number < 900);
    CHECK_FALSE(told_of(row.source).empty());
  }
  CHECK(country_of_number(899)->on_tags == "XI");
  CHECK(country_of_number(900) == nullptr);
}

}  // namespace evenclaw::test
