#include "core/trade/call_line/unsaid_off.hpp"

#include <doctest/doctest.h>

#include "tests/core/trade/call_line/saying.hpp"

using namespace evenclaw;

namespace {

bool mean_the_same(std::string_view a, std::string_view b) {
  const auto first = read_line(a, saying::in_crush(), english());
  const auto second = read_line(b, saying::in_crush(), english());
  REQUIRE(second);
  return first && first->clauses == second->clauses;
}

}  // namespace

TEST_CASE("days right behind a wrap or block that is put on are when it comes off") {
  CHECK(mean_the_same("412 LH wrap 3d", "412 LH wrap on, off 3d"));
  CHECK(mean_the_same("412 LH SU; block inside 4 weeks", "412 LH SU; block on inside, off 28d"));
}

TEST_CASE("of what is off already they are asked about") {
  CHECK_FALSE(saying::faults_of("412 LH wrap off 3d").empty());
  CHECK_FALSE(saying::faults_of("412 LH block came off 3d").empty());
}

TEST_CASE("a number without its unit is no time") {
  CHECK_FALSE(saying::faults_of("412 LH wrap 3").empty());
}

TEST_CASE("behind a block the days may be of the wrap before it, and are asked about") {
  CHECK_FALSE(saying::faults_of("412 LH wrap, block outside 3d").empty());
}
