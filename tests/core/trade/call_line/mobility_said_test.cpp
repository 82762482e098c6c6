// How she walks, told in her turn: never a score without its scale.
#include <doctest/doctest.h>

#include "tests/core/trade/call_line/saying.hpp"

using namespace evenclaw;

TEST_CASE("a score is kept with its scale") {
  const Turn british = saying::turn_of({"412 lame LH; mobility 2 of 3"});
  CHECK(british.mobility.scale == MobilityScale::zero_to_three);
  CHECK(british.mobility.score == 2);
  const Turn other = saying::turn_of({"412 mobility score 3 out of 5"});
  CHECK(other.mobility.scale == MobilityScale::one_to_five);
  CHECK(other.mobility.score == 3);
  CHECK(saying::printed({"412 LH SU; mobility two of three"}) ==
        "412 mobility 2 of 3 // LH sole ulcer");
}

TEST_CASE("a score without its scale is refused with both ways of saying it") {
  const Faults faults = saying::faults_of("412 mobility 2");
  REQUIRE(faults.size() == 1);
  CHECK(faults.front().message == "on which scale is mobility 2?");
  CHECK(faults.front().remedy == "say \"mobility 2 of 3\" (0-3) or \"mobility 2 of 5\" (1-5)");
  CHECK_FALSE(saying::faults_of("412 mobility 2; LH SU").empty());
}

TEST_CASE("a score outside its scale, or on none, is refused") {
  for (const char* said : {"412 mobility 4 of 3", "412 mobility 0 of 5", "412 mobility 2 of 4",
                           "412 mobility of 3", "412 mobility", "412 mobility 2 of"}) {
    CAPTURE(said);
    CHECK(saying::faults_of(said).size() == 1);
  }
  CHECK(saying::faults_of("412 mobility 0 of 3").empty());
}

TEST_CASE("another score needs a no before it") {
  CHECK_FALSE(saying::refusal_of({"412 mobility 2 of 3", "mobility 3 of 3"}).empty());
  CHECK(saying::refusal_of({"412 mobility 2 of 3", "mobility 2 of 3"}).empty());
  CHECK(saying::printed({"412 mobility 2 of 3", "no, mobility 3 of 3"}) == "412 mobility 3 of 3");
  CHECK_FALSE(saying::refusal_of({"412", "no, mobility 3 of 3"}).empty());
}

TEST_CASE("the leg she is lame on names no foot, and the refusal says so") {
  const Faults faults = saying::faults_of("301 lame LH 2 of 3 outside SU");
  REQUIRE(faults.size() == 1);
  CHECK(faults.front().remedy == "say the line again with \"; LH\" before that");
  CHECK(saying::faults_of("301 lame LH 2 of 3; LH outside SU").empty());
}

TEST_CASE("sound now is how she walks") {
  CHECK(saying::printed({"320 sound now"}) == "320 walks sound");
}
