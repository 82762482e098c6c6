#include "core/trade/call_line/number_range.hpp"

#include <doctest/doctest.h>

using namespace evenclaw;

namespace {

std::vector<std::string> range_in(std::string_view text) {
  return numbers_of_range(tokens_of(text), 2, text);
}

using Numbers = std::vector<std::string>;

}  // namespace

TEST_CASE("a range holds its two ends and all that lies between them") {
  CHECK(range_in("250-253 all trimmed") == Numbers{"250", "251", "252", "253"});
}

TEST_CASE("of a range that runs backwards or too far only the two numbers are known") {
  CHECK(range_in("253-250") == Numbers{"253", "250"});
  CHECK(range_in("250-900") == Numbers{"250", "900"});
}

TEST_CASE("a comma makes a list and no range") {
  CHECK(range_in("250, 253").empty());
}
