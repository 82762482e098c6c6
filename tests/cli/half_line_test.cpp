#include "cli/half_line.hpp"

#include <doctest/doctest.h>

using namespace evenclaw::cli;

TEST_CASE("a cow named before a question mark is not lost") {
  HalfLine half;
  REQUIRE(half.asks("414 LH ?"));
  CHECK(half.kept() == "414 LH");
  CHECK(half.completed("DD raw behind; rest fine") == "414 LH DD raw behind; rest fine");
  CHECK(half.completed("415 nothing found") == "415 nothing found");
}

TEST_CASE("whoever types the whole line again is not heard twice") {
  HalfLine half;
  REQUIRE(half.asks("414 lh ?"));
  CHECK(half.completed("414 LH DD raw behind") == "414 LH DD raw behind");
}

TEST_CASE("asked step by step, a line grows") {
  HalfLine half;
  REQUIRE(half.asks("414 ?"));
  REQUIRE(half.asks("LH ?"));
  CHECK(half.kept() == "414 LH");
  REQUIRE(half.asks("?"));
  CHECK(half.kept() == "414 LH");
  CHECK(half.completed("DD") == "414 LH DD");
}

TEST_CASE("an empty line drops what was asked about") {
  HalfLine half;
  REQUIRE(half.asks("414 ?"));
  CHECK(half.completed("").empty());
  CHECK(half.kept().empty());
}

TEST_CASE("a doubtful number and a question mark alone are told apart") {
  HalfLine half;
  CHECK_FALSE(half.asks("412?"));
  CHECK_FALSE(half.asks("412 lame LH"));
  CHECK(half.asks("?"));
  CHECK(half.kept().empty());
}

TEST_CASE("two question marks ask for all that may follow, one for the likeliest") {
  HalfLine half;
  REQUIRE(half.asks("414 LH ??"));
  CHECK(half.wants_all());
  CHECK(half.kept() == "414 LH");
  REQUIRE(half.asks("?"));
  CHECK_FALSE(half.wants_all());
  CHECK_FALSE(half.asks("???"));
}
