#include "core/trade/call_line/lookalike.hpp"

#include <doctest/doctest.h>

#include "tests/core/trade/call_line/saying.hpp"

using namespace evenclaw;
using namespace evenclaw::saying;

TEST_CASE("letters of another alphabet are told by the Latin ones they look like") {
  CHECK(in_latin_letters("LН") == "LH");
  CHECK(in_latin_letters("sprау") == "spray");
  CHECK(in_latin_letters("spray").empty());
  CHECK(in_latin_letters("жspray").empty());
  CHECK(in_latin_letters("Färse").empty());
}

TEST_CASE("letters between digits are told by the digits they look like") {
  CHECK(in_digits("4l3") == "413");
  CHECK(in_digits("4O2") == "402");
  CHECK(in_digits("4x3").empty());
  CHECK(in_digits("413").empty());
}

TEST_CASE("a word that looks right and is not is refused with what is wrong about it") {
  const Faults faults = faults_of("LН sole ulcer");
  REQUIRE(faults.size() == 1);
  CHECK(faults[0].message == "\"LН\" holds letters of another alphabet that only look like these");
  CHECK(faults[0].remedy == "type it anew: LH");
}

TEST_CASE("a number with a letter in it is refused with the number it looks like") {
  const Faults faults = faults_of("4l3 lame LH", false);
  REQUIRE(faults.size() == 1);
  CHECK(faults[0].remedy == "a cow is digits only: say the number again, 413 if that is meant");
  CHECK(faults_of("4x3 lame LH", false)[0].remedy == "a cow is digits only: say the number again");
}
