#include <doctest/doctest.h>

#include "tests/core/trade/told_lines.hpp"

using namespace evenclaw;
using namespace evenclaw::told;

TEST_CASE("foul is a stop at once, with the vet and the vet's plan as answers") {
  const ToldDay day = told_day("412\nRH foul between");
  const std::vector<Warning> warnings = check_turn(day.draft.turn, {}, day.today, false, english());
  REQUIRE(warnings.size() == 1);
  CHECK(warnings[0].rank == Rank::stop);
  CHECK(warnings[0].words == "Foul (right hind): look for a stick; vet, or the vet's plan, today.");
  CHECK(warnings[0].answers == Names{"RH vet", "RH by the vet's plan", "go ahead"});
}

TEST_CASE("a foot swollen above both claws is taken for foul") {
  CHECK(fired_on("412\nRH swollen above both claws") == Names{"stop foul-without-the-vet RH"});
}

TEST_CASE("the farmer told and a spray are no vet and no plan") {
  CHECK(fired_on("412\nRH foul; spray; told the farmer") == Names{"stop foul-without-the-vet RH"});
}

TEST_CASE("foul treated by the vet's plan is no stop") {
  CHECK(fired_on("412\nRH foul; by the vet's plan").empty());
  CHECK(fired_on("412\nRH foul; herd plan").empty());
}

TEST_CASE("foul that the vet has seen, as told today, is no stop") {
  ToldDay day = told_day("412\nRH foul; vet\n---\n412 recheck\nRH foul slight");
  CHECK(rules_fired(day.warnings(), false) == Names{"stop foul-without-the-vet RH"});
  for (TaskRow& task : day.past.known.rows.tasks) {
    task.open = false;
    task.closed_on = day.today;
  }
  CHECK(rules_fired(day.warnings(), false).empty());
}

TEST_CASE(
    "foul treated as the vet said is no stop, whoever gave it and of whatever foot it is told") {
  CHECK(fired_on("412\nRH foul; given whitemix as the vet said, no withdrawal").empty());
  CHECK(fired_on("412\nRH foul\ninjected with whitemix by the vet; no withdrawal").empty());
  CHECK(fired_on("412\ngiven whitemix by the farmer as the vet said, no withdrawal\nRH foul")
            .empty());
}

TEST_CASE("a medicine the farmer gave of his own is no word of the vet's on foul") {
  CHECK(fired_on("412\nRH foul; given whitemix by the farmer, no withdrawal") ==
        Names{"stop foul-without-the-vet RH"});
  CHECK(fired_on("412\nRH foul; pain relief asked for from the vet") ==
        Names{"stop foul-without-the-vet RH"});
}

TEST_CASE("a spray as the vet said on the other foot does not treat foul") {
  CHECK(fired_on("412\nRH foul\nLH DD raw behind; spray as the vet said") ==
        Names{"stop foul-without-the-vet RH"});
}

TEST_CASE("a wrap over foul is asked about, one taken off is not") {
  CHECK(fired_on("412\nRH foul; vet; wrap on") == Names{"ask foul-wrapped RH"});
  CHECK(fired_on("412\nRH foul; vet\n---\n412\nRH foul; vet; wrap taken off").empty());
}

TEST_CASE("a wrap on the other foot does not shut foul in") {
  CHECK(fired_on("412\nRH foul; vet\nLH DD raw behind; wrap on").empty());
}
