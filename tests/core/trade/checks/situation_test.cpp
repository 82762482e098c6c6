#include "core/trade/checks/situation.hpp"

#include <doctest/doctest.h>

#include "tests/core/trade/told_turns.hpp"

using namespace evenclaw;
using namespace evenclaw::told;

TEST_CASE("ulcers, white line lesions and thin soles hurt, skin does not hurt a block") {
  CHECK(hurts(found(Lesion::su, Claw::outside)));
  CHECK(hurts(found(Lesion::wla, Claw::outside)));
  CHECK(hurts(found(Lesion::ts, Claw::outside)));
  CHECK_FALSE(hurts(found(Lesion::dd)));
  CHECK_FALSE(hurts(found(Lesion::hhe, Claw::outside, Degree::bad)));
}

TEST_CASE("blood in the sole hurts when it was called bad") {
  CHECK(hurts(found(Lesion::sh, Claw::outside, Degree::bad)));
  CHECK_FALSE(hurts(found(Lesion::sh, Claw::outside, Degree::plain)));
}

TEST_CASE("a lesion called on both claws hurts on either, one without a claw on neither") {
  const FootCall both = foot(Foot::lh, {found(Lesion::su, Claw::both)});
  CHECK(painful_finding(both, Claw::outside) != nullptr);
  CHECK(painful_finding(both, Claw::inside) != nullptr);
  const FootCall unsaid = foot(Foot::lh, {found(Lesion::su, Claw::not_called)});
  CHECK(painful_finding(unsaid, Claw::outside) == nullptr);
  CHECK(painful_finding(unsaid, Claw::inside) == nullptr);
}

TEST_CASE("a lesion without a code is named by the words that were said") {
  Finding stone = found(Lesion::other, Claw::outside);
  CHECK(spoken_name(stone) == "other");
  stone.words = "stone in the sole";
  CHECK(spoken_name(stone) == "stone in the sole");
  CHECK(spoken_name(found(Lesion::su)) == "sole ulcer");
}

TEST_CASE("the foot said last can be put right by a word, an earlier one cannot") {
  const Turn turn = cow({foot(Foot::lh, {found(Lesion::dd)}), foot(Foot::rh, {found(Lesion::dd)})});
  const CowPast unknown;
  const Situation situation{turn, unknown, first_of_november, false, english()};
  CHECK(foot_correction(situation, Foot::rh, Foot::lh) == Names{"no, LH"});
  CHECK(foot_correction(situation, Foot::lh, Foot::rh).empty());
}

TEST_CASE("every lesion has a name that fits into a warning") {
  for (const LesionFacts& facts : all_lesions()) {
    Finding finding;
    finding.lesion = facts.lesion;
    CAPTURE(facts.name);
    CHECK(spoken_name(finding).size() <= 25);
  }
  Finding finding;
  finding.lesion = Lesion::shc;
  CHECK(spoken_name(finding) == "sole haemorrhage");
}
