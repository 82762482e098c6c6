#include "core/trade/call_line/possible.hpp"

#include <doctest/doctest.h>

using namespace evenclaw;

namespace {

Finding finding_of(Lesion lesion, Claw claw, Place place) {
  Finding finding;
  finding.lesion = lesion;
  finding.claw = claw;
  finding.place = place;
  return finding;
}

}  // namespace

TEST_CASE("horn lesions do not lie in skin, skin lesions not in horn") {
  struct Row {
    Lesion lesion;
    Claw claw;
    Place place;
    bool possible;
  };

  constexpr Row rows[] = {
      {Lesion::su, Claw::outside, Place::sole_middle, true},
      {Lesion::su, Claw::outside, Place::between, false},
      {Lesion::wla, Claw::outside, Place::white_line_heel, true},
      {Lesion::wla, Claw::outside, Place::sole_middle, false},
      {Lesion::wl, Claw::not_called, Place::between, false},
      {Lesion::dd, Claw::none, Place::behind, true},
      {Lesion::dd, Claw::none, Place::heel, false},
      {Lesion::dd, Claw::outside, Place::behind, false},
      {Lesion::dd, Claw::outside, Place::not_called, false},
      {Lesion::ih, Claw::none, Place::between, true},
      {Lesion::ih, Claw::none, Place::behind, false},
      {Lesion::tu, Claw::inside, Place::toe, true},
      {Lesion::tu, Claw::inside, Place::heel, false},
      {Lesion::bu, Claw::inside, Place::toe, false},
      {Lesion::sh, Claw::both, Place::white_line_side, true},
      {Lesion::tn, Claw::inside, Place::heel, false},
      {Lesion::hfa, Claw::inside, Place::outer_wall, false},
      {Lesion::hfv, Claw::inside, Place::outer_wall, true},
      {Lesion::sw, Claw::outside, Place::in_front, true},
      {Lesion::sw, Claw::none, Place::heel, true},
      {Lesion::sw, Claw::none, Place::outer_wall, false},
      {Lesion::ac, Claw::none, Place::heel, false},
      {Lesion::sc, Claw::outside, Place::not_called, false},
      {Lesion::foreign_body, Claw::none, Place::between, true},
      {Lesion::foreign_body, Claw::outside, Place::heel, true},
      {Lesion::other, Claw::outside, Place::heel, true},
      {Lesion::other, Claw::none, Place::between, true},
      {Lesion::other, Claw::outside, Place::between, false},
  };
  for (const Row& row : rows) {
    CAPTURE(word_of(row.lesion));
    CAPTURE(word_of(row.place));
    CHECK(why_impossible(finding_of(row.lesion, row.claw, row.place)).has_value() != row.possible);
  }
}

TEST_CASE("a lesion alone is always possible, and so it is in each of its usual places") {
  for (const LesionFacts& facts : all_lesions()) {
    const Claw claw = is_of_a_claw(facts.lesion) ? Claw::outside : Claw::none;
    CHECK_FALSE(why_impossible(finding_of(facts.lesion, claw, Place::not_called)).has_value());
    for (const Place place : facts.usual_places) {
      CHECK_FALSE(why_impossible(finding_of(facts.lesion, claw, place)).has_value());
    }
  }
}

TEST_CASE("a stage is said of digital dermatitis only") {
  for (const LesionFacts& facts : all_lesions()) {
    Finding finding = finding_of(facts.lesion, Claw::not_called, Place::not_called);
    finding.stage = DdStage::raw;
    if (!is_of_a_claw(facts.lesion)) finding.claw = Claw::none;
    CHECK(why_impossible(finding).has_value() == (facts.lesion != Lesion::dd));
  }
}

TEST_CASE("a zone that is not the place is refused") {
  Finding finding = finding_of(Lesion::su, Claw::outside, Place::heel);
  finding.zone = 6;
  CHECK_FALSE(why_impossible(finding).has_value());
  finding.zone = 4;
  CHECK(why_impossible(finding).has_value());
}

TEST_CASE("digital dermatitis is in a lesion of the horn or in a growth, and in nothing else") {
  for (const LesionFacts& facts : all_lesions()) {
    CAPTURE(facts.name);
    Finding finding = finding_of(facts.lesion, Claw::none, Place::not_called);
    finding.dd_infected = true;
    const bool may_be = facts.group == LesionGroup::horn || facts.lesion == Lesion::ih;
    CHECK(why_impossible(finding).has_value() != may_be);
  }
}
