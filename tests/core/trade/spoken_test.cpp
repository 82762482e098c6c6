#include "core/trade/spoken.hpp"

#include <doctest/doctest.h>

#include <set>
#include <string>

using namespace evenclaw;

TEST_CASE("each foot has a name of its own") {
  std::set<std::string> names;
  for (const Foot foot : all_feet) names.emplace(spoken(foot));
  CHECK(names == std::set<std::string>{"left front", "right front", "left hind", "right hind"});
}

TEST_CASE("a claw nobody called has no name") {
  CHECK(spoken(Claw::outside) == "outside");
  CHECK(spoken(Claw::inside) == "inside");
  CHECK(spoken(Claw::both) == "both");
  CHECK(spoken(Claw::none).empty());
  CHECK(spoken(Claw::not_called).empty());
}

TEST_CASE("a day is said by day and month") {
  CHECK(spoken(*day_of(CivilDate{2026, 9, 3})) == "3 Sep");
  CHECK(spoken(*day_of(CivilDate{2026, 12, 31})) == "31 Dec");
  CHECK(spoken(*day_of(CivilDate{2027, 1, 1})) == "1 Jan");
}

TEST_CASE("a sentence starts with a capital") {
  CHECK(sentence("left hind") == "Left hind");
  CHECK(sentence("Left hind") == "Left hind");
  CHECK(sentence("") == "");
  CHECK(sentence("412 gone") == "412 gone");
}

TEST_CASE("feet are named together as people name them") {
  CHECK(spoken(FootSet{}).empty());
  CHECK(spoken(FootSet{Foot::lh}) == "left hind");
  CHECK(spoken(hind_feet) == "both hinds");
  CHECK(spoken(front_feet) == "both fronts");
  CHECK(spoken(four_feet) == "all four feet");
  CHECK(spoken(FootSet{Foot::lf, Foot::rh}) == "left front and right hind");
  CHECK(spoken(FootSet{Foot::lf, Foot::lh, Foot::rh}) == "left front, left hind and right hind");
}
