#include "core/trade/not_called.hpp"

#include <doctest/doctest.h>

#include <set>

using namespace evenclaw;

TEST_CASE("a place is asked of a lesion whose name does not say where it is") {
  const std::set<Lesion> asked = {Lesion::dd,  Lesion::sh, Lesion::shd, Lesion::shc,
                                  Lesion::u,   Lesion::su, Lesion::wl,  Lesion::wlf,
                                  Lesion::wla, Lesion::hf, Lesion::sw};
  for (const LesionFacts& facts : all_lesions()) {
    CAPTURE(facts.name);
    Finding finding;
    finding.lesion = facts.lesion;
    CHECK(place_is_missing(finding) == (asked.count(facts.lesion) > 0));
    finding.place = Place::heel;
    CHECK_FALSE(place_is_missing(finding));
  }
}

TEST_CASE("a claw is asked of a lesion of one claw, not of heel horn erosion or of the skin") {
  const std::set<Lesion> not_asked = {
      Lesion::dd,    Lesion::id,      Lesion::hhe,          Lesion::ip,       Lesion::ih,
      Lesion::sw,    Lesion::ac,      Lesion::sc,           Lesion::injury,   Lesion::dewclaw,
      Lesion::other, Lesion::unclear, Lesion::foreign_body, Lesion::overgrown};
  for (const LesionFacts& facts : all_lesions()) {
    CAPTURE(facts.name);
    Finding finding;
    finding.lesion = facts.lesion;
    CHECK(claw_is_missing(finding) == (not_asked.count(facts.lesion) == 0));
    finding.claw = Claw::both;
    CHECK_FALSE(claw_is_missing(finding));
  }
}

TEST_CASE("how bad is asked of a lesion with a code, the stage of DD, and nothing of a shape") {
  for (const LesionFacts& facts : all_lesions()) {
    CAPTURE(facts.name);
    Finding finding;
    finding.lesion = facts.lesion;
    const bool is_dd = facts.lesion == Lesion::dd;
    const bool is_asked =
        !is_dd && facts.group != LesionGroup::shape && facts.code_known != CodeKnown::none;
    CHECK(degree_is_missing(finding) == is_asked);
    CHECK(stage_is_missing(finding) == is_dd);
    finding.degree = Degree::slight;
    finding.stage = DdStage::m2;
    CHECK_FALSE(degree_is_missing(finding));
    CHECK_FALSE(stage_is_missing(finding));
  }
}
