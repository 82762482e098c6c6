#include <doctest/doctest.h>

#include "tests/core/trade/told_lines.hpp"

using namespace evenclaw;
using namespace evenclaw::told;

namespace {

Finding dd(DdStage stage, Place place) {
  Finding finding = found(Lesion::dd);
  finding.stage = stage;
  finding.place = place;
  return finding;
}

Names fired_by(const Finding& first, const Finding& second) {
  return fired(cow({foot(Foot::rh, {first, second})}), {}, first_of_november, false);
}

const Names two_ways = {"ask called-in-two-ways RH"};

}  // namespace

TEST_CASE("one lesion at one place in two stages or degrees is asked about at once") {
  CHECK(fired_by(dd(DdStage::raw, Place::behind), dd(DdStage::chronic, Place::behind)) == two_ways);
  CHECK(fired_by(found(Lesion::sh, Claw::outside, Degree::slight),
                 found(Lesion::sh, Claw::outside, Degree::bad)) == two_ways);
}

TEST_CASE("two lesions of one kind at two places or on two claws are two lesions") {
  CHECK(fired_by(dd(DdStage::raw, Place::behind), dd(DdStage::chronic, Place::in_front)).empty());
  CHECK(fired_by(found(Lesion::sh, Claw::outside, Degree::slight),
                 found(Lesion::sh, Claw::inside, Degree::bad))
            .empty());
}

TEST_CASE("a block or wrap that is off and still on is asked about, in either order") {
  CHECK(fired_on("512\nLH block taken off; block still on") == Names{"ask called-in-two-ways LH"});
  CHECK(fired_on("512\nLH wrap still on; wrap off") == Names{"ask called-in-two-ways LH"});
}

TEST_CASE("one put on and taken off in one call, where none was known, is asked about") {
  CHECK(fired_on("512\nLH DD raw behind; wrap on, off 3d\nLH wrap off") ==
        Names{"ask called-in-two-ways LH"});
  CHECK(fired_on("512\nLH DD raw behind; wrap on\nRH wrap off").empty());
}

TEST_CASE("one taken off and a new one put on is no contradiction") {
  CHECK(fired_on("512\nLH DD raw behind; wrap off; wrap on").empty());
}

TEST_CASE("a cow that came lame and walks sound is asked about, and without either she is not") {
  CHECK(fired_on("512 lame LH\nLH sole ulcer outside middle bad; block inside\nwalks sound") ==
        Names{"ask called-in-two-ways"});
  CHECK(fired_on("512 lame LH\nLH sole ulcer outside middle bad; block inside").empty());
  CHECK(fired_on("512\nLH sole ulcer outside middle bad; block inside\nwalks sound").empty());
}

TEST_CASE("no withdrawal of one product and a withdrawal of what was given later are no two ways") {
  CHECK(
      fired_on(
          "512\nLH DD raw behind; paste with tar, no withdrawal\ngiven whitemix; withdrawal 4d") !=
      Names{"ask called-in-two-ways"});
}

TEST_CASE("a withdrawal and none are asked about, in either order") {
  CHECK(fired_on("512 withdrawal 4d; no withdrawal") == Names{"ask called-in-two-ways"});
  CHECK(fired_on("512 no withdrawal\nmilk withheld 3d") == Names{"ask called-in-two-ways"});
  CHECK(fired_on("512 milk withheld 3d; meat withheld 5d").empty());
}

TEST_CASE("what she does in the crush and no longer does is asked about, two things are not") {
  CHECK(fired_on("512 kicks\nno longer kicks") == Names{"ask called-in-two-ways"});
  CHECK(fired_on("512 kicks\nno longer jumps").empty());
}

TEST_CASE("two lengths of one claw are asked about, one of each claw is not") {
  CHECK(fired_on("512\nLH outside length 78 mm; outside length 75 mm") ==
        Names{"ask called-in-two-ways LH"});
  CHECK(fired_on("512\nLH outside length 78 mm; inside length 75 mm; outside sole 6 mm").empty());
}

TEST_CASE("sound beside a lame score, and lame beside the best score, are asked about") {
  CHECK(fired_on("512\nwalks sound; mobility 2 of 3") == Names{"ask called-in-two-ways"});
  CHECK(fired_on("512 lame LH; mobility 0 of 3\nLH DD raw behind") ==
        Names{"ask called-in-two-ways"});
  CHECK(fired_on("512\nwalks sound; mobility 1 of 3").empty());
  CHECK(fired_on("512 lame LH; mobility 1 of 3\nLH DD raw behind").empty());
}
