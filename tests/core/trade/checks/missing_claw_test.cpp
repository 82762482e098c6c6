#include <doctest/doctest.h>

#include "tests/core/trade/told_lines.hpp"

using namespace evenclaw;
using namespace evenclaw::told;

namespace {

const Names asked_of_the_claw = {"ask claw-that-is-missing LH"};

}  // namespace

TEST_CASE("a block on a claw that is missing is asked about") {
  CHECK(fired_on("417\nLH outside claw gone; block outside") == asked_of_the_claw);
  CHECK(fired_on("417\nLH block outside; outside claw gone") == asked_of_the_claw);
}

TEST_CASE("a claw is missing from the visit on at which it was said to be") {
  ToldDay day = told_day("417\nLH block on outside");
  FootRow row;
  row.foot = Foot::lh;
  row.missing = Claw::outside;
  day.past.known.rows.feet.push_back(row);
  CHECK(rules_fired(day.warnings(), false) == asked_of_the_claw);
}

TEST_CASE("a lesion of the horn on a claw that is missing is asked about") {
  CHECK(fired_on("412\nLH inside claw missing; inside bruise heel slight") == asked_of_the_claw);
}

TEST_CASE("a length of a claw that is missing is asked about") {
  CHECK(fired_on("412\nLH outside length 78 mm; outside claw missing") == asked_of_the_claw);
}

TEST_CASE("one word of mouth puts the block on the claw that is there") {
  const ToldDay day = told_day("417\nLH outside claw gone; block outside");
  REQUIRE(day.warnings().size() == 1);
  CHECK(day.warnings().front().words ==
        "Left hind: block on the outside claw, which is missing. Which claw?");
  CHECK(day.warnings().front().answers == Names{"no, inside", "go ahead"});
}

TEST_CASE("a block taken off the stump and an injury there are not asked about") {
  CHECK(fired_on("412\nLH inside stump; block came off inside; inside injury").empty());
}

TEST_CASE("what is called on the claw that is there is not asked about") {
  CHECK(
      fired_on("412\nLH inside claw missing; outside bruise slight; outside length 78 mm").empty());
}

TEST_CASE("which claw was taken off, or is missing, is asked when nobody said it") {
  const ToldDay day = told_day("412\nLH claw amputated by the vet");
  REQUIRE(day.warnings().size() == 1);
  CHECK(day.warnings().front().words == "Left hind: claw amputated, which claw?");
  CHECK(day.warnings().front().answers ==
        Names{"LH claw amputated outside", "LH claw amputated inside", "go ahead"});
  CHECK(fired_on("412\nLH claw amputated inside by the vet").empty());
}

TEST_CASE("a block whose claw was not called is not offered for a claw that is missing") {
  const ToldDay day = told_day("412\nLH outside claw gone; block on; inside toe ulcer slight");
  REQUIRE(day.warnings().size() == 1);
  CHECK(day.warnings().front().words ==
        "Left hind: block on, which claw? The toe ulcer is inside; outside is missing.");
  CHECK(day.warnings().front().answers == Names{"LH no, no block on", "go ahead"});
}
