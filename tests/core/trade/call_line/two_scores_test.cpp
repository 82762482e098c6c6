#include "core/trade/call_line/two_scores.hpp"

#include <doctest/doctest.h>

#include "tests/core/trade/call_line/saying.hpp"

using namespace evenclaw;
using namespace evenclaw::saying;

TEST_CASE("of two scores in one line the one that holds is said alone") {
  for (const char* line : {"412 mobility 2 of 3; mobility 3 of 3",
                           "mobility 2 of 3; LH SU; "
                           "mobility 3 of 3"}) {
    CAPTURE(line);
    const Faults faults = faults_of(line);
    REQUIRE(faults.size() == 1);
    CHECK(faults[0].message == "two mobility scores are called of her in one line");
    CHECK(faults[0].remedy ==
          "say the line again with the one that holds: \"mobility 2 of 3\", or \"mobility 3 of "
          "3\"");
  }
}

TEST_CASE("the same score twice, and a correction, are no two scores") {
  CHECK(faults_of("412 mobility 2 of 3; mobility 2 of 3", false).empty());
  CHECK(faults_of("412 mobility 2 of 3; no, mobility 3 of 3", false).empty());
}
