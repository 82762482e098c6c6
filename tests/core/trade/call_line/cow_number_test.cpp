#include "core/trade/call_line/cow_number.hpp"

#include <doctest/doctest.h>

#include <string>

using namespace evenclaw;

TEST_CASE("a cow has a number of up to twelve digits, or the fifteen of a reader") {
  for (const std::size_t digits : {1U, 4U, 12U, 15U}) {
    CAPTURE(digits);
    const std::string number(digits, '1');
    CHECK_FALSE(why_no_cow_number(number, number));
  }
  for (const std::size_t digits : {13U, 14U, 16U}) {
    CAPTURE(digits);
    const std::string number(digits, '1');
    const auto refusal = why_no_cow_number(number, number);
    REQUIRE(refusal);
    CHECK(refusal->message.find("has 15 digits, this has " + std::to_string(digits)) !=
          std::string::npos);
  }
  CHECK(why_no_cow_number("41.2", "41.2"));
}

TEST_CASE("a reader's number with a digit lost may stand in two parts") {
  CHECK(misread_tag_tokens(tokens_of("82600000060001 LH"), 0) == 1);
  CHECK(misread_tag_tokens(tokens_of("826 00000060001 LH"), 0) == 2);
  CHECK(misread_tag_tokens(tokens_of("826 417 LH"), 0) == 0);
  CHECK(misread_tag_tokens(tokens_of("412 LH"), 0) == 0);
}
