// Places on a foot in the words that are said, with the published zone number beside them.
#pragma once

#include <optional>
#include <span>
#include <string_view>

#include "core/base/enum_words.hpp"

namespace evenclaw {

/// Where on a foot. The zone map is that of the International Lameness Committee (Kuopio 2008),
/// zones 0-12; which of 7 and 8 is the front wall, and which of 11 and 12 lies in front, is not
/// confirmed, so those places carry no number unless one was said.
enum class Place {
  not_called,
  between,          // zone 0, skin between the claws
  white_line_toe,   // zone 1
  white_line_side,  // zone 2
  white_line_heel,  // zone 3, the typical site of white line disease
  sole_middle,      // zone 4, the typical site of a sole ulcer
  toe,              // zone 5, the toe part of the sole
  heel,             // zone 6, the bulb
  outer_wall,       // zones 7 and 8
  in_front,         // zone 9, skin at the front
  behind,           // zone 10, skin above the bulbs, the typical site of DD
  wall_between      // zones 11 and 12, the wall that faces the other claw
};

template <>
struct EnumWords<Place> {
  static constexpr EnumWord<Place> table[] = {{Place::not_called, "not_called"},
                                              {Place::between, "between"},
                                              {Place::white_line_toe, "white_line_toe"},
                                              {Place::white_line_side, "white_line_side"},
                                              {Place::white_line_heel, "white_line_heel"},
                                              {Place::sole_middle, "sole_middle"},
                                              {Place::toe, "toe"},
                                              {Place::heel, "heel"},
                                              {Place::outer_wall, "outer_wall"},
                                              {Place::in_front, "in_front"},
                                              {Place::behind, "behind"},
                                              {Place::wall_between, "wall_between"}};
};

struct PlaceFacts {
  Place place;
  std::string_view said;     // "white line at the heel"
  std::optional<int> zone;   // only where one number is certain
  bool needs_claw;           // false for skin that belongs to the whole foot
  std::string_view anatomy;  // in our own words
  std::string_view source;   // where place and number come from, and how sure that is
};

std::span<const PlaceFacts> all_places();
const PlaceFacts& facts_of(Place place);
/// The place of a zone number 0-12; nothing outside that range.
std::optional<Place> place_of_zone(int zone);

}  // namespace evenclaw
