#include <doctest/doctest.h>

#include "tests/core/trade/told_lines.hpp"

using namespace evenclaw;
using namespace evenclaw::told;

TEST_CASE("a swelling above one claw is a stop, above a claw not called it is not") {
  CHECK(fired_on("412\nRH outside swollen") == Names{"stop swollen-on-one-side RH"});
  CHECK(fired_on("412\nRH swelling inside") == Names{"stop swollen-on-one-side RH"});
  CHECK(fired_on("412\nRH swollen").empty());
}

TEST_CASE("a swelling on one side is a stop whose side is asked for, also when the vet is called") {
  CHECK(fired_on("412\nRH swollen on one side") ==
        Names{"stop swollen-on-one-side RH", "ask swelling-side-not-called RH"});
  CHECK(fired_on("412\nRH swollen on one side; vet") == Names{"ask swelling-side-not-called RH"});
  CHECK(fired_on("412\nRH swollen on one side; vet\nRH inside swelling").empty());
}

TEST_CASE("pus above the coronet and a swelling beside it are one infection and one stop") {
  CHECK(fired_on("412\nRH pus above the coronet; outside swollen") ==
        Names{"stop pus-above-the-horn RH"});
}

TEST_CASE("toe necrosis and bone showing are stops, once for a foot") {
  CHECK(fired_on("412\nLH outside toe necrosis") == Names{"stop toe-or-bone LH"});
  CHECK(fired_on("412\nLH outside bone showing") == Names{"stop toe-or-bone LH"});
  CHECK(fired_on("412\nLH outside toe necrosis; bone showing") == Names{"stop toe-or-bone LH"});
  CHECK(fired_on("412\nLH outside toe necrosis\nRH bone showing").size() == 2);
}

TEST_CASE("bleeding that stopped is no stop") {
  CHECK(fired_on("412\nLH outside sole ulcer; bleeding").empty());
  CHECK(fired_on("412\nLH outside sole ulcer; bleeding, does not stop") ==
        Names{"stop bleeding-goes-on LH"});
}

TEST_CASE("what is beyond trimming is told while she stands there") {
  for (const char* seen : {"RH outside swollen", "RH pus above the horn", "RH outside toe necrosis",
                           "RH bone showing", "RH keeps bleeding", "went down in the crush"}) {
    CAPTURE(seen);
    const ToldDay day = told_day(std::string("412\n") + seen);
    CHECK(fired(day.draft.turn, {}, day.today, false).size() == 1);
  }
}

TEST_CASE("the vet called, for whatever foot of hers, settles what is beyond trimming") {
  for (const char* seen : {"RH outside swollen", "RH pus above the horn", "RH outside toe necrosis",
                           "RH bone showing", "RH keeps bleeding", "went down in the crush"}) {
    CAPTURE(seen);
    CHECK(fired_on(std::string("412\n") + seen + "; vet").empty());
    CHECK(fired_on(std::string("412\nLH vet\n") + seen).empty());
  }
}

TEST_CASE("what the vet took off or numbed, he has seen: of that foot no vet is asked for") {
  CHECK(fired_on("412\nLH outside toe necrosis; outside claw amputated by the vet").empty());
  CHECK(fired_on("412\nLH outside toe necrosis; bone showing; nerve block by the vet").empty());
  CHECK(fired_on("412\nRH outside swollen; claw amputated outside by the vet").empty());
  CHECK(fired_on("412\nLH outside toe necrosis\nRH outside claw amputated by the vet") ==
        Names{"stop toe-or-bone LH"});
}

TEST_CASE("pain relief the vet is asked for is not the vet") {
  CHECK(fired_on("412\nLH outside toe necrosis; pain relief asked for from the vet") ==
        Names{"stop toe-or-bone LH"});
}

TEST_CASE("let out because she went down, she is a stop still") {
  CHECK(fired_on("412\nLH trimmed; unfinished; went down in the crush") ==
        Names{"stop down-in-the-crush"});
  CHECK(fired_on("412\nnot done, went down in the crush") == Names{"stop down-in-the-crush"});
  CHECK(fired_on("412\nnot done, lay down in the crush").empty());
}

TEST_CASE("lame on two legs waits until all of her was said") {
  const ToldDay day = told_day("412 lame LH and RF\nLH DD raw behind\nRF inside bruise");
  CHECK(fired_on("412 lame LH and RF\nLH DD raw behind\nRF inside bruise") ==
        Names{"stop lame-on-two-legs"});
  CHECK(fired(day.draft.turn, {}, day.today, false).empty());
  CHECK(fired_on("412 lame LH\nLH DD raw behind").empty());
}

TEST_CASE("the words of a stop tell what is seen, where, and whom to ring") {
  const std::vector<Warning> warnings = told_day("412\nRH outside swollen").warnings();
  REQUIRE(warnings.size() == 1);
  CHECK(warnings[0].words ==
        "Swollen above one claw (right hind outside): the joint may be reached. Vet.");
  CHECK(warnings[0].answers == Names{"RH vet", "go ahead"});
}
