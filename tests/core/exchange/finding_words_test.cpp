#include "core/exchange/finding_words.hpp"

#include <doctest/doctest.h>

using namespace evenclaw;

namespace {

FindingWords words_with(std::string_view lesions, std::string_view others = "") {
  return FindingWords(with_words_said(lesions_said(lesions).value(), words_said(others).value()));
}

}  // namespace

TEST_CASE("a lesion is what somebody said of its word, and nothing is guessed at") {
  const FindingWords words = words_with("A=DD, X=ignore");
  CHECK(words.lesion("A").value == Lesion::dd);
  CHECK(words.lesion("a").value == Lesion::dd);
  CHECK(words.lesion("X").is_passed_over);
  for (const char* cell : {"DD", "digital dermatitis", "B", ""}) {
    CAPTURE(cell);
    CHECK_FALSE(words.lesion(cell).value);
    CHECK_FALSE(words.lesion(cell).is_passed_over);
  }
}

TEST_CASE("codes of the atlas are read where that was said, and a word of its own goes first") {
  const FindingWords words = words_with("icar, DS=DD");
  CHECK(words.lesion("SU").value == Lesion::su);
  CHECK(words.lesion("su").value == Lesion::su);
  CHECK(words.lesion("DS").value == Lesion::dd);
  CHECK_FALSE(words.lesion("sole ulcer").value);
  CHECK_FALSE(words.lesion("overgrown").value);
}

TEST_CASE("a word is looked for as it is written before letter case is left aside") {
  const FindingWords words = words_with("d=DD, D=DS");
  CHECK(words.lesion("d").value == Lesion::dd);
  CHECK(words.lesion("D").value == Lesion::ds);
}

TEST_CASE("other words are what somebody said, else words of the trade") {
  const FindingWords words =
      words_with("icar", "foot:1=LH outside, degree:2=plain, degree:0=ignore, stage:?=not called");
  CHECK(words.foot(HerdColumn::foot, "1").value == FootSaid{Foot::lh, Claw::outside});
  CHECK(words.foot(HerdColumn::foot, "RH").value == FootSaid{Foot::rh, std::nullopt});
  CHECK_FALSE(words.foot(HerdColumn::claw, "1").value);
  CHECK(words.foot(HerdColumn::claw, "inside").value == FootSaid{std::nullopt, Claw::inside});
  CHECK(words.degree("2").value == Degree::plain);
  CHECK(words.degree("bad").value == Degree::bad);
  CHECK(words.degree("0").is_passed_over);
  CHECK_FALSE(words.degree("3").value);
  CHECK(words.stage("?").value == DdStage::not_called);
  CHECK(words.stage("M1").value == DdStage::m1);
  CHECK(words.place("heel").value == PlaceSaid{Place::heel, std::nullopt});
}

TEST_CASE("a zone is a number from 0 to 12, also as spreadsheets write it") {
  const FindingWords words = words_with("icar");
  CHECK(words.zone("4").value == PlaceSaid{Place::sole_middle, 4});
  CHECK(words.zone("4,0").value == PlaceSaid{Place::sole_middle, 4});
  CHECK(words.zone("z10").value == PlaceSaid{Place::behind, 10});
  for (const char* cell : {"13", "4,5", "heel", "-1", ""}) {
    CAPTURE(cell);
    CHECK_FALSE(words.zone(cell).value);
  }
}
