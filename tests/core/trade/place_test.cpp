#include "core/trade/place.hpp"

#include <doctest/doctest.h>

using namespace evenclaw;

TEST_CASE("every place stands in the table at its own row") {
  for (const PlaceFacts& facts : all_places()) CHECK(&facts_of(facts.place) == &facts);
  CHECK(all_places().size() == std::size(EnumWords<Place>::table));
}

TEST_CASE("each zone from 0 to 12 has a place and no other number has") {
  for (int zone = 0; zone <= 12; ++zone) CHECK(place_of_zone(zone).has_value());
  CHECK_FALSE(place_of_zone(-1).has_value());
  CHECK_FALSE(place_of_zone(13).has_value());
}

TEST_CASE("where a place has one certain zone, that zone is the place") {
  for (const PlaceFacts& facts : all_places()) {
    if (facts.zone) CHECK(place_of_zone(*facts.zone) == facts.place);
  }
}

TEST_CASE("the walls carry no zone number because which is which is not confirmed") {
  CHECK_FALSE(facts_of(Place::outer_wall).zone.has_value());
  CHECK_FALSE(facts_of(Place::wall_between).zone.has_value());
  CHECK(place_of_zone(7) == place_of_zone(8));
  CHECK(place_of_zone(11) == place_of_zone(12));
}

TEST_CASE("the typical sites have their published zones") {
  CHECK(facts_of(Place::sole_middle).zone == 4);
  CHECK(facts_of(Place::white_line_heel).zone == 3);
  CHECK(facts_of(Place::behind).zone == 10);
  CHECK(facts_of(Place::between).zone == 0);
}

TEST_CASE("skin needs no claw, horn does") {
  for (const Place skin : {Place::between, Place::in_front, Place::behind}) {
    CHECK_FALSE(facts_of(skin).needs_claw);
  }
  CHECK(facts_of(Place::heel).needs_claw);
  CHECK(facts_of(Place::white_line_side).needs_claw);
}

TEST_CASE("every called place names where its number comes from") {
  for (const PlaceFacts& facts : all_places()) {
    CHECK(facts.source.empty() == (facts.place == Place::not_called));
  }
}
