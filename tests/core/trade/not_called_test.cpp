#include "core/trade/not_called.hpp"

#include <doctest/doctest.h>

#include <set>

using namespace evenclaw;

TEST_CASE("a place is asked of a lesion whose name does not say where it is") {
  const std::set<Lesion> asked = {Lesion::dd, Lesion::sh,  Lesion::u,   Lesion::su,
                                  Lesion::wl, Lesion::wlf, Lesion::wla, Lesion::ts};
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
  const std::set<Lesion> not_asked = {Lesion::dd, Lesion::id, Lesion::hhe,
                                      Lesion::ip, Lesion::ih, Lesion::other};
  for (const LesionFacts& facts : all_lesions()) {
    CAPTURE(facts.name);
    Finding finding;
    finding.lesion = facts.lesion;
    CHECK(claw_is_missing(finding) == (not_asked.count(facts.lesion) == 0));
    finding.claw = Claw::both;
    CHECK_FALSE(claw_is_missing(finding));
  }
}
