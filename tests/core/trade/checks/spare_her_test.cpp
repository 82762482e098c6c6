#include <doctest/doctest.h>

#include "tests/core/trade/told_lines.hpp"

using namespace evenclaw;
using namespace evenclaw::told;

namespace {

const Names calving = {"ask near-calving"};

}  // namespace

TEST_CASE("near calving and heavy in calf are asked about as soon as they are said") {
  for (const char* words : {"near calving", "due to calve in 3d", "springing", "heavy in calf"}) {
    CAPTURE(words);
    const ToldDay day = told_day(std::string("412 routine; ") + words);
    CHECK(fired(day.draft.turn, {}, day.today, false) == calving);
  }
}

TEST_CASE("a cow that was let go because she is near calving is not asked about") {
  CHECK(fired_on("412 near calving; not done").empty());
}

TEST_CASE("a cow advised to be culled is asked about with a wrap or block on") {
  CHECK(fired_on("412\nLH DD raw behind; wrap on; cull advised") ==
        Names{"ask leaving-with-block-or-wrap LH"});
  CHECK(fired_on("412\nLH outside sole ulcer; block on inside; cull advised") ==
        Names{"ask leaving-with-block-or-wrap LH"});
  CHECK(fired_on("412\nLH outside sole ulcer; cull advised").empty());
}

TEST_CASE("what she wears from before counts, unless it came off") {
  const std::string before = "412\nLH outside bruise; block on inside\n---\n412 cull advised\n";
  CHECK(fired_on(before + "LH block still on; outside bruise") ==
        Names{"ask leaving-with-block-or-wrap LH"});
  CHECK(fired_on(before + "LH block taken off; outside bruise").empty());
}

TEST_CASE("the vet called settles whether she can travel") {
  CHECK(fired_on("412\nLH DD raw behind; wrap on; cull advised; vet").empty());
}

TEST_CASE("long in the crush is noted when she is let out, and never asked about") {
  const char* const long_there = "412\n# 20 minutes in the crush\nLH trimmed";
  CHECK(noted_on(long_there) == Names{"note long-in-the-crush"});
  CHECK(fired_on(long_there).empty());
  CHECK(noted_on("412\n# 19 minutes in the crush\nLH trimmed").empty());
  ToldDay day = told_day(long_there);
  CHECK(noted(day.draft.turn, day.past.known, day.today, false).empty());
}
