#include "core/exchange/finding_terms.hpp"

#include <doctest/doctest.h>

#include <map>
#include <string>
#include <utility>

#include "core/trade/call_line/language.hpp"

using namespace evenclaw;

TEST_CASE("feet and claws are understood in the words of the trade, alone and together") {
  CHECK(foot_said("LH") == FootSaid{Foot::lh, std::nullopt});
  CHECK(foot_said("Left Hind") == FootSaid{Foot::lh, std::nullopt});
  CHECK(foot_said("hinten links") == FootSaid{Foot::lh, std::nullopt});
  CHECK(foot_said("VR") == FootSaid{Foot::rf, std::nullopt});
  CHECK(foot_said("lateral") == FootSaid{std::nullopt, Claw::outside});
  CHECK(foot_said("both") == FootSaid{std::nullopt, Claw::both});
  CHECK(foot_said("left hind outside") == FootSaid{Foot::lh, Claw::outside});
  CHECK(foot_said("HL, außen") == FootSaid{Foot::lh, Claw::outside});
  CHECK(foot_said("inner RF") == FootSaid{Foot::rf, Claw::inside});
}

TEST_CASE("letters and numbers that are no word of the trade are no foot") {
  for (const char* cell : {"", "L", "H", "1", "LHO", "links", "LH RH", "left hind lame",
                           "both hinds", "LH outside inside", "not_called", "none"}) {
    CAPTURE(cell);
    CHECK_FALSE(foot_said(cell));
  }
}

TEST_CASE("a place is a word of the trade, ours, or a zone that is said to be one") {
  CHECK(place_said("heel") == PlaceSaid{Place::heel, std::nullopt});
  CHECK(place_said("weiße Linie am Ballen") == PlaceSaid{Place::white_line_heel, std::nullopt});
  CHECK(place_said("white_line_toe") == PlaceSaid{Place::white_line_toe, std::nullopt});
  CHECK(place_said("z4") == PlaceSaid{Place::sole_middle, 4});
  CHECK(place_said("Zone 10") == PlaceSaid{Place::behind, 10});
  for (const char* cell : {"", "4", "z13", "zone", "zone 4 5", "somewhere", "not_called"}) {
    CAPTURE(cell);
    CHECK_FALSE(place_said(cell));
  }
  CHECK(zone_said(0) == PlaceSaid{Place::between, 0});
  CHECK_FALSE(zone_said(13));
}

TEST_CASE("degrees and stages are words, and a number alone is neither") {
  CHECK(degree_said("bad") == Degree::bad);
  CHECK(degree_said("Mittel") == Degree::plain);
  CHECK_FALSE(degree_said("2"));
  CHECK_FALSE(degree_said("not_called"));
  CHECK(stage_said("m2") == DdStage::m2);
  CHECK(stage_said("M4.1") == DdStage::m4_1);
  CHECK(stage_said("M4,1") == DdStage::m4_1);
  CHECK(stage_said("raw") == DdStage::raw);
  CHECK_FALSE(stage_said("4"));
  CHECK_FALSE(stage_said("M5"));
}

TEST_CASE("a lesion is meant by its code, our word, its name or as it is called") {
  CHECK(lesion_said("dd") == Lesion::dd);
  CHECK(lesion_said("foreign_body") == Lesion::foreign_body);
  CHECK(lesion_said("Sole Ulcer") == Lesion::su);
  CHECK(lesion_said("Rusterholz") == Lesion::su);
  CHECK(lesion_said("sonstiges") == Lesion::other);
  CHECK_FALSE(lesion_said("abscess"));  // of what, nobody knows
  CHECK_FALSE(lesion_said("A"));
  CHECK_FALSE(lesion_said(""));
}

TEST_CASE("a code of the atlas is one of its codes, and none of our own words") {
  CHECK(atlas_lesion("DS") == Lesion::ds);
  CHECK(atlas_lesion(" hhe ") == Lesion::hhe);
  CHECK_FALSE(atlas_lesion("overgrown"));
  CHECK_FALSE(atlas_lesion("other"));
  CHECK_FALSE(atlas_lesion("sole ulcer"));
}

TEST_CASE("no word of a foot, a claw, a place, a degree, a stage or a lesion means two things") {
  std::map<std::pair<TermKind, std::string>, int> meanings;
  for (const CallLanguage& language : call_languages()) {
    const Language& words = language.words();
    for (std::size_t at = 0; at < words.phrases().size(); ++at) {
      const Phrase& phrase = words.phrases()[at];
      const bool is_read = phrase.kind == TermKind::foot || phrase.kind == TermKind::claw ||
                           phrase.kind == TermKind::place || phrase.kind == TermKind::degree ||
                           phrase.kind == TermKind::stage || phrase.kind == TermKind::lesion;
      if (!is_read) continue;
      CAPTURE(phrase.words);
      const auto [first, is_new] =
          meanings.try_emplace({phrase.kind, words.folded(at)}, phrase.value);
      CHECK((is_new || first->second == phrase.value));
    }
  }
  CHECK(meanings.size() > 200);
}
