#include <doctest/doctest.h>

#include "tests/core/trade/call_line/saying.hpp"

using namespace evenclaw;

TEST_CASE("a turn is printed as one line for the cow and one for each foot, as first named") {
  const Turn turn =
      saying::turn_of({"412 lame RH", "RH SU; LH DD raw", "RH block on", "rest fine"});
  const std::vector<std::string> lines = print_turn(turn, english());
  REQUIRE(lines.size() == 3);
  CHECK(lines[0] == "412 lame RH; rest fine");
  CHECK(lines[1] == "RH sole ulcer; block on");
  CHECK(lines[2] == "LH DD raw");
}

TEST_CASE("words that could be taken for calls are printed in quotes") {
  CHECK(saying::printed({"no number, \"brown, lame LH\""}) == "no number, \"brown, lame LH\"");
  CHECK(saying::printed({"412 came for \"x; y\""}) == "412 came for \"x; y\"");
  CHECK(saying::printed({"412 LH other \"say \"\"so\"\"\""}) ==
        "412 // LH other \"say \"\"so\"\"\"");
}

TEST_CASE("a zone is printed only where the place does not tell it") {
  CHECK(saying::printed({"412 LH SU z4"}) == "412 // LH sole ulcer middle of the sole");
  CHECK(saying::printed({"412 LH SH z8"}) == "412 // LH bruise outer wall z8");
}

TEST_CASE("feet are told together where one word means them") {
  CHECK(saying::printed({"412 lame hinds"}) == "412 lame both hinds");
  CHECK(saying::printed({"412 lame all four"}) == "412 lame all four");
  CHECK(saying::printed({"412 lame LF and RH"}) == "412 lame LF and RH");
}
