#include "core/trade/call_line/claw_in_short.hpp"

#include <doctest/doctest.h>

#include "tests/core/trade/call_line/saying.hpp"

using namespace evenclaw;
using namespace evenclaw::saying;

TEST_CASE("in and out are claws behind a lesion, a block or its comma") {
  CHECK(printed({"412 LH SU out, bad"}) == "412 // LH outside sole ulcer, bad");
  CHECK(printed({"412 LH out SU"}) == "412 // LH outside sole ulcer");
  CHECK(printed({"412 LH WLA heel, out; block, in"}) ==
        "412 // LH outside white line abscess heel; block on inside");
  CHECK(printed({"412 LH WLA out heel"}) == "412 // LH outside white line abscess heel");
  CHECK(printed({"412 LH block in, wood, off 28d"}) == "412 // LH block on wood inside, off 28d");
}

TEST_CASE("a claw before a block that has its own is of the lesion before") {
  CHECK(printed({"412 LH SU outside block inside"}) ==
        "412 // LH outside sole ulcer; block on inside");
  CHECK(printed({"412 LH SU outside opened outside"}) ==
        "412 // LH outside sole ulcer; opened outside");
  CHECK_FALSE(faults_of("LH SU outside block").empty());
  CHECK_FALSE(faults_of("LH SU outside block, inside").empty());
  CHECK_FALSE(faults_of("LH SU outside bruise inside").empty());
}

TEST_CASE("in leads on to a place or a time and is no claw then") {
  CHECK(printed({"412 LH thin sole in the middle"}) == "412 // LH thin sole middle of the sole");
  CHECK(printed({"412 LH SU; see again in 3 weeks"}) == "412 // LH sole ulcer; see again 21d");
  CHECK_FALSE(faults_of("LH block in 3 weeks").empty());
}

TEST_CASE("out of a scale is no claw, and out of nothing is none either") {
  CHECK(printed({"412 lame LH 2 out of 3"}) == "412 lame LH; mobility 2 of 3");
  CHECK_FALSE(faults_of("412 out", false).empty());
}
