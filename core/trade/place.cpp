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
    {Place::not_called, "place not called", std::nullopt, false, ""},
    {Place::between, "between the claws", 0, false, seen_skin},
    {Place::white_line_toe, "white line at the toe", 1, true, seen_number},
    {Place::white_line_side, "white line at the side", 2, true, seen_number},
    {Place::white_line_heel, "white line at the heel", 3, true,
     "zone number seen: typical site of white line disease (Shearer); wording from memory"},
    {Place::sole_middle, "middle of the sole", 4, true,
     "zone number seen: typical site of a sole ulcer (ILC 2008); wording from memory"},
    {Place::toe, "toe", 5, true, seen_number},
    {Place::heel, "heel", 6, true, "zone number seen: heel erosion (Shearer)"},
    {Place::outer_wall, "outer wall", std::nullopt, true, seen_pair},
    {Place::in_front, "in front", 9, false,
     "zone number seen: foul and DD listed there (Shearer); exact place from memory"},
    {Place::behind, "behind", 10, false, seen_skin},
    {Place::wall_between, "wall between the claws", std::nullopt, true, seen_pair},
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
