#include <doctest/doctest.h>

#include "tests/core/trade/told_lines.hpp"

using namespace evenclaw;
using namespace evenclaw::told;

TEST_CASE("a claw called with a question mark is kept and asked about, the other claw offered") {
  const ToldDay day = told_day("412\nLH SU outside?");
  const Finding& ulcer = day.draft.turn.feet.front().findings.front();
  CHECK(ulcer.claw == Claw::outside);
  CHECK(ulcer.words == "outside?");
  const std::vector<Warning> warnings = day.warnings();
  REQUIRE(warnings.size() == 1);
  CHECK(warnings[0].words == "Left hind, sole ulcer: \"outside?\" Is it so?");
  CHECK(warnings[0].answers == Names{"no, inside", "go ahead"});
}

TEST_CASE("the other claw called in its stead leaves no doubt") {
  CHECK(fired_on("412\nLH SU outside?\nno, inside").empty());
}

TEST_CASE("whatever is said of a finding may be doubtful") {
  for (const char* said : {"SU? outside", "SU outside, bad?", "DD raw? behind", "WLA outside heel?",
                           "SU outside in the middle?"}) {
    CAPTURE(said);
    CHECK(fired_on(std::string("412\nLH ") + said) == Names{"ask called-in-doubt LH"});
  }
  CHECK(fired_on("412\nLH SU outside, bad?\nno, slight").empty());
}

TEST_CASE("words that somebody chose may hold a question mark and are no doubt of a finding") {
  CHECK(fired_on("412\nLH unclear \"black spot?\"").empty());
}
