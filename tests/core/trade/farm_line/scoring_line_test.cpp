#include "core/trade/farm_line/scoring_line.hpp"

#include <doctest/doctest.h>

namespace evenclaw {

namespace {

constexpr auto on_zero_to_three = std::optional(MobilityScale::zero_to_three);

std::vector<ScoringClause> read(std::string_view text,
                                std::optional<MobilityScale> scale = on_zero_to_three,
                                const Language& language = english()) {
  const auto line = read_scoring_line(text, scale, language, 1);
  REQUIRE_MESSAGE(line, text << ": " << line.faults().front().message);
  return line->clauses;
}

Fault refused(std::string_view text, std::optional<MobilityScale> scale = on_zero_to_three) {
  const auto line = read_scoring_line(text, scale, english(), 3);
  REQUIRE_FALSE_MESSAGE(line, text);
  return line.faults().front();
}

CowScored scored(std::string number, int score, FootSet feet = {}, bool mends = false) {
  CowScored cow;
  cow.number = std::move(number);
  cow.score = score;
  cow.feet = feet;
  cow.mends = mends;
  return cow;
}

}  // namespace

TEST_CASE("a cow and her score, with the leg where one was seen") {
  CHECK(read("412 2") == std::vector<ScoringClause>{scored("412", 2)});
  CHECK(read("413 3 LH") == std::vector<ScoringClause>{scored("413", 3, {Foot::lh})});
  CHECK(read("413 3 lame both hinds") == std::vector<ScoringClause>{scored("413", 3, hind_feet)});
  CHECK(read("412 2, 413 0; 0414 1") ==
        std::vector<ScoringClause>{scored("412", 2), scored("413", 0), scored("0414", 1)});
}

TEST_CASE("animals of whom nobody read the number are counted at their score") {
  CHECK(read("40 at 0") == std::vector<ScoringClause>{CountScored{40, 0, false}});
  CHECK(read("no, 52 at 0") == std::vector<ScoringClause>{CountScored{52, 0, true}});
  CHECK(read("scrap 40 at 0") == std::vector<ScoringClause>{CountScored{0, 0, true}});
  CHECK(refused("0 at 2").message == "nobody is counted so");
}

TEST_CASE("what is said behind no holds instead, and scrap takes it back") {
  CHECK(read("no, 412 3") == std::vector<ScoringClause>{scored("412", 3, {}, true)});
  const auto scrapped = read("scrap 412");
  REQUIRE(scrapped.size() == 1);
  CHECK(std::get<CowScored>(scrapped[0]).scrapped);
}

TEST_CASE("a cow who was there and not scored is said so") {
  const auto clauses = read("412 not scored");
  REQUIRE(clauses.size() == 1);
  CHECK_FALSE(std::get<CowScored>(clauses[0]).score.has_value());
}

TEST_CASE("scale, place, group and how many were there are said on lines of their own") {
  CHECK(read("scale 0 to 3", std::nullopt) ==
        std::vector<ScoringClause>{ScaleSaid{MobilityScale::zero_to_three}});
  CHECK(read("scale 1-5", std::nullopt) ==
        std::vector<ScoringClause>{ScaleSaid{MobilityScale::one_to_five}});
  CHECK(read("watched at the parlour exit") ==
        std::vector<ScoringClause>{WatchedSaid{"the parlour exit"}});
  CHECK(read("group high yielders") == std::vector<ScoringClause>{AnimalsSaid{"high yielders"}});
  CHECK(read("132 present") == std::vector<ScoringClause>{PresentSaid{132}});
  CHECK(read("scale 0 to 3; 412 3", std::nullopt).size() == 2);
}

TEST_CASE("a score before its scale is refused with what to say") {
  for (const char* text : {"412 2", "40 at 0", "132 present", "watched at the gate", "scrap 412"}) {
    CAPTURE(text);
    const Fault fault = refused(text, std::nullopt);
    CHECK(fault.slug == "call-not-understood");
    CHECK(fault.line == 3);
    CHECK(fault.remedy == "say it first: \"scale 0 to 3\" or \"scale 1 to 5\"");
  }
}

TEST_CASE("a score outside its scale is none, whichever scale it is") {
  CHECK(refused("412 4").slug == "call-impossible");
  CHECK(refused("412 4").column == 5);
  CHECK(refused("412 0", MobilityScale::one_to_five).message == "the scale goes from 1 to 5");
  CHECK(refused("40 at 7").slug == "call-impossible");
}

TEST_CASE("a scale nobody knows, and a second one in the same scoring, are refused") {
  CHECK(refused("scale 0 to 4", std::nullopt).message == "which scale is it?");
  CHECK(refused("scale 1 to 5").slug == "call-impossible");
}

TEST_CASE("a line that cannot be read whole is refused whole, at the word") {
  CHECK(refused("412").message.find("a score is missing") == 0);
  CHECK(refused("412 2 wobbly").token == "wobbly");
  CHECK(refused("limping").column == 1);
  CHECK(refused("no").message == "behind \"no\" stands what holds instead");
  CHECK(refused("12345 present").slug == "call-impossible");
}

TEST_CASE("an empty line and a comment say nothing") {
  CHECK(read("").empty());
  CHECK(read("# after milking").empty());
}

TEST_CASE("the same lines are called in German") {
  CHECK(read("Skala 0 bis 3", std::nullopt, german()) ==
        std::vector<ScoringClause>{ScaleSaid{MobilityScale::zero_to_three}});
  CHECK(read("40 mit 0", on_zero_to_three, german()) ==
        std::vector<ScoringClause>{CountScored{40, 0, false}});
  CHECK(read("nein, 412 3", on_zero_to_three, german()) ==
        std::vector<ScoringClause>{scored("412", 3, {}, true)});
}

}  // namespace evenclaw
