#include <doctest/doctest.h>

#include "tests/core/trade/told_lines.hpp"

using namespace evenclaw;
using namespace evenclaw::told;

namespace {

const Names asked_for_the_vet = {"ask both-claws-painful LH"};

}  // namespace

TEST_CASE("both claws painful is asked about before anybody names a claw for the block") {
  const ToldDay day = told_day("412\nLH outside sole ulcer; inside white line abscess");
  CHECK(fired(day.draft.turn, {}, day.today, false) == asked_for_the_vet);
  CHECK(fired_on("412\nLH both claws thin sole") == asked_for_the_vet);
}

TEST_CASE("once a claw is named the check of that block speaks instead") {
  CHECK(fired_on("412\nLH outside sole ulcer; inside sole ulcer; block on inside") ==
        Names{"stop block-on-painful-claw LH"});
}

TEST_CASE("a block without a claw is one question with it, not two") {
  CHECK(fired_on("412\nLH outside sole ulcer; inside sole ulcer; block on") == asked_for_the_vet);
}

TEST_CASE("heel erosion, a slight bruise and shapes are not painful") {
  for (const char* other : {"inside heel erosion", "inside bruise slight", "inside corkscrew",
                            "inside white line fissure"}) {
    CAPTURE(other);
    CHECK(fired_on(std::string("412\nLH outside sole ulcer; ") + other).empty());
  }
}

TEST_CASE("pain on one claw of each hind foot is not asked about") {
  CHECK(fired_on("412\nLH outside sole ulcer\nRH inside sole ulcer").empty());
}

TEST_CASE("the vet called settles it") {
  CHECK(fired_on("412\nLH outside sole ulcer; inside sole ulcer; vet").empty());
}
