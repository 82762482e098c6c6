#include <doctest/doctest.h>

#include "tests/core/trade/told_turns.hpp"

using namespace evenclaw;
using namespace evenclaw::told;

namespace {

const Day today = first_of_november;

Finding dd(DdStage stage, Place place) {
  Finding finding = found(Lesion::dd);
  finding.stage = stage;
  finding.place = place;
  return finding;
}

Names fired_by(const Finding& first, const Finding& second) {
  return fired(cow({foot(Foot::rh, {first, second})}), {}, today, false);
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
