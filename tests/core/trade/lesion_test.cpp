#include "core/trade/lesion.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>

using namespace evenclaw;

TEST_CASE("every lesion stands in the table at its own row") {
  for (const LesionFacts& facts : all_lesions()) CHECK(&facts_of(facts.lesion) == &facts);
  CHECK(all_lesions().size() == std::size(EnumWords<Lesion>::table));
}

TEST_CASE("no two lesions share a name, and each says where its code comes from") {
  std::set<std::string_view> names;
  for (const LesionFacts& facts : all_lesions()) {
    CHECK(names.insert(facts.name).second);
    CHECK_FALSE(facts.source.empty());
  }
}

TEST_CASE("bruise and ulcers are one family getting worse, and so are white line lesions") {
  for (const Lesion lesion : {Lesion::sh, Lesion::u, Lesion::su, Lesion::bu, Lesion::tu}) {
    CHECK(facts_of(lesion).family == Lesion::u);
  }
  for (const Lesion lesion : {Lesion::wl, Lesion::wlf, Lesion::wla}) {
    CHECK(facts_of(lesion).family == Lesion::wl);
  }
}

TEST_CASE("a family is named by a lesion of that family") {
  for (const LesionFacts& facts : all_lesions()) {
    CHECK(facts_of(facts.family).family == facts.family);
  }
}

TEST_CASE("horn that hurts under a block is in the horn of a claw") {
  for (const LesionFacts& facts : all_lesions()) {
    if (!facts.painful_horn) continue;
    CHECK(facts.kept_on == KeptOn::claw);
    CHECK(facts.group == LesionGroup::horn);
  }
  CHECK(facts_of(Lesion::su).painful_horn);
  CHECK(facts_of(Lesion::wla).painful_horn);
  CHECK_FALSE(facts_of(Lesion::sh).painful_horn);
}

TEST_CASE("usual places of a claw lesion are horn, those of a skin lesion are skin") {
  for (const LesionFacts& facts : all_lesions()) {
    for (const Place place : facts.usual_places) {
      CAPTURE(facts.name);
      CHECK(facts_of(place).needs_claw == (facts.kept_on == KeptOn::claw));
    }
  }
}

TEST_CASE("a lesion that lies nowhere else has places to lie") {
  for (const LesionFacts& facts : all_lesions()) {
    if (facts.nowhere_else) CHECK_FALSE(facts.usual_places.empty());
  }
  CHECK(facts_of(Lesion::wla).nowhere_else);
  CHECK_FALSE(facts_of(Lesion::su).nowhere_else);
}

TEST_CASE("the infectious lesions are those of the published grouping") {
  for (const LesionFacts& facts : all_lesions()) {
    const bool is_listed = facts.lesion == Lesion::dd || facts.lesion == Lesion::id ||
                           facts.lesion == Lesion::hhe || facts.lesion == Lesion::ip;
    CHECK((facts.group == LesionGroup::infectious) == is_listed);
  }
}
