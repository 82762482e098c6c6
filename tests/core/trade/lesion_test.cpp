#include "core/trade/lesion.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>
#include <utility>

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
  for (const Lesion lesion : {Lesion::sh, Lesion::shd, Lesion::shc, Lesion::u, Lesion::su,
                              Lesion::bu, Lesion::tu, Lesion::tn}) {
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

TEST_CASE("a subtype is called by the general name when nobody subtyped it") {
  constexpr std::pair<Lesion, Lesion> kinds[] = {
      {Lesion::shd, Lesion::sh}, {Lesion::shc, Lesion::sh}, {Lesion::su, Lesion::u},
      {Lesion::bu, Lesion::u},   {Lesion::tu, Lesion::u},   {Lesion::wlf, Lesion::wl},
      {Lesion::wla, Lesion::wl}, {Lesion::hfa, Lesion::hf}, {Lesion::hfh, Lesion::hf},
      {Lesion::hfv, Lesion::hf}, {Lesion::dd, Lesion::dd},  {Lesion::sh, Lesion::sh}};
  for (const auto& kind : kinds) {
    const Lesion lesion = kind.first;
    const Lesion general = kind.second;
    CAPTURE(word_of(lesion));
    CHECK(is_kind_of(lesion, general));
    CHECK(facts_of(lesion).parent == general);
    CHECK(facts_of(general).parent == general);
  }
  CHECK_FALSE(is_kind_of(Lesion::sh, Lesion::u));  // one case with an ulcer, and no ulcer
  CHECK_FALSE(is_kind_of(Lesion::tn, Lesion::u));
  CHECK_FALSE(is_kind_of(Lesion::u, Lesion::su));
}

TEST_CASE("every subtype is of the family of its general name") {
  for (const LesionFacts& facts : all_lesions()) {
    CAPTURE(facts.name);
    CHECK(facts_of(facts.parent).family == facts.family);
  }
}

TEST_CASE("an ulcer is a worse form of a bruise, an abscess of a fissure, dead bone of an ulcer") {
  CHECK(is_worse_form(Lesion::su, Lesion::sh));
  CHECK(is_worse_form(Lesion::u, Lesion::shd));
  CHECK(is_worse_form(Lesion::tn, Lesion::tu));
  CHECK(is_worse_form(Lesion::wla, Lesion::wlf));
  CHECK_FALSE(is_worse_form(Lesion::sh, Lesion::su));
  CHECK_FALSE(is_worse_form(Lesion::su, Lesion::u));
  CHECK_FALSE(is_worse_form(Lesion::wla, Lesion::wl));  // it may have been one from the start
  CHECK_FALSE(is_worse_form(Lesion::su, Lesion::wlf));
}

TEST_CASE("shapes, heel horn erosion and mild blood in the sole do not hurt under a block") {
  for (const LesionFacts& facts : all_lesions()) {
    CAPTURE(facts.name);
    CHECK_FALSE(facts.hurts_source.empty());
    if (facts.group == LesionGroup::shape) CHECK(facts.hurts == Hurts::no);
    if (facts.hurts != Hurts::no) CHECK(may_have_claw(facts.lesion));
  }
  CHECK(facts_of(Lesion::su).hurts == Hurts::yes);
  CHECK(facts_of(Lesion::wla).hurts == Hurts::yes);
  CHECK(facts_of(Lesion::blood_drawn).hurts == Hurts::yes);
  CHECK(facts_of(Lesion::sh).hurts == Hurts::when_bad);
  CHECK(facts_of(Lesion::hfv).hurts == Hurts::when_bad);
  CHECK(facts_of(Lesion::hhe).hurts == Hurts::no);
  CHECK(facts_of(Lesion::wlf).hurts == Hurts::no);
}

TEST_CASE("what has an atlas code says how well the code is known") {
  for (const LesionFacts& facts : all_lesions()) {
    CAPTURE(facts.name);
    const std::string_view word = word_of(facts.lesion);
    const bool is_code = word.front() >= 'A' && word.front() <= 'Z';
    CHECK((facts.code_known != CodeKnown::none) == is_code);
  }
  CHECK(facts_of(Lesion::wl).code_known == CodeKnown::seen);
  CHECK(facts_of(Lesion::cc).code_known == CodeKnown::weak);
  CHECK(facts_of(Lesion::sc).code_known == CodeKnown::memory);
}

TEST_CASE("usual places of a claw lesion are horn, those of a skin lesion are skin") {
  for (const LesionFacts& facts : all_lesions()) {
    for (const Place place : facts.usual_places) {
      CAPTURE(facts.name);
      if (facts.kept_on == KeptOn::claw_or_foot) continue;  // a swelling lies above horn and heel
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
