#include "core/trade/place.hpp"

#include <array>
#include <cassert>
#include <cstddef>

namespace evenclaw {

namespace {

constexpr std::string_view seen_number =
    "zone number seen: ILC 2008 map; exact wording from memory";
constexpr std::string_view seen_skin = "zone number seen: Shearer's description of the zones";
constexpr std::string_view seen_pair =
    "zone numbers seen as a pair only; which of the two is which is not confirmed";

constexpr PlaceFacts place_table[] = {
    {Place::not_called, "place not called", std::nullopt, false, "", ""},
    {Place::between, "between the claws", 0, false, "skin between the claws", seen_skin},
    {Place::white_line_toe, "white line at the toe", 1, true, "white line round the tip of the toe",
     seen_number},
    {Place::white_line_side, "white line at the side", 2, true,
     "white line along the outer wall, its middle part", seen_number},
    {Place::white_line_heel, "white line at the heel", 3, true,
     "white line where outer wall and heel meet",
     "zone number seen: typical site of white line disease (Shearer); wording from memory"},
    {Place::sole_middle, "middle of the sole", 4, true,
     "where sole and heel meet, nearer to the other claw",
     "zone number seen: typical site of a sole ulcer (ILC 2008); wording from memory"},
    {Place::toe, "toe", 5, true, "the toe part of the sole", seen_number},
    {Place::heel, "heel", 6, true, "the bulb of the heel",
     "zone number seen: heel erosion (Shearer)"},
    {Place::outer_wall, "outer wall", std::nullopt, true,
     "front wall and outer wall (zones 7 and 8 together)", seen_pair},
    {Place::in_front, "in front", 9, false, "skin at the front of the foot above the horn",
     "zone number seen: foul and DD listed there (Shearer); exact place from memory"},
    {Place::behind, "behind", 10, false, "skin at the back of the foot above the heels", seen_skin},
    {Place::wall_between, "wall between the claws", std::nullopt, true,
     "wall that faces the other claw (zones 11 and 12 together)", seen_pair},
};

constexpr std::array<Place, 13> place_by_zone = {Place::between,
                                                 Place::white_line_toe,
                                                 Place::white_line_side,
                                                 Place::white_line_heel,
                                                 Place::sole_middle,
                                                 Place::toe,
                                                 Place::heel,
                                                 Place::outer_wall,
                                                 Place::outer_wall,
                                                 Place::in_front,
                                                 Place::behind,
                                                 Place::wall_between,
                                                 Place::wall_between};

}  // namespace

std::span<const PlaceFacts> all_places() {
  return place_table;
}

const PlaceFacts& facts_of(Place place) {
  const auto index = static_cast<std::size_t>(place);
  assert(place_table[index].place == place);
  return place_table[index];
}

std::optional<Place> place_of_zone(int zone) {
  if (zone < 0 || zone >= static_cast<int>(place_by_zone.size())) return std::nullopt;
  return place_by_zone[static_cast<std::size_t>(zone)];
}

}  // namespace evenclaw
