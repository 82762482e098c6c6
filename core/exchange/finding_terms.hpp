// What a word in a list of findings says in the words of the trade, without anybody's having to
// explain it.
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

#include "core/trade/dd_stage.hpp"
#include "core/trade/foot.hpp"
#include "core/trade/lesion.hpp"
#include "core/trade/place.hpp"

namespace evenclaw {

// Understood are the words of the call line, in each of its languages, and those we keep things by.
// Letter case does not matter, nor a hyphen for a blank; nothing for a word that is not known.

struct FootSaid {
  std::optional<Foot> foot = {};
  std::optional<Claw> claw = {};

  friend bool operator==(const FootSaid&, const FootSaid&) = default;
};

/// "LH", "hinten links", "outside", and both in one: "left hind outside", "HL, außen".
std::optional<FootSaid> foot_said(std::string_view words);

struct PlaceSaid {
  Place place = Place::not_called;
  std::optional<std::int32_t> zone = {};

  friend bool operator==(const PlaceSaid&, const PlaceSaid&) = default;
};

/// "heel", "white line at the heel", "z4", "zone 4"; a bare number is no place.
std::optional<PlaceSaid> place_said(std::string_view words);

/// The place of a zone 0-12 with its number; nothing for another number.
std::optional<PlaceSaid> zone_said(int zone);

/// "bad", "mittel"; a number is no degree.
std::optional<Degree> degree_said(std::string_view words);

/// "M2", "M4.1" (and "M4,1"), "raw".
std::optional<DdStage> stage_said(std::string_view words);

/// By our code or word ("DD", "foreign_body"), its name ("sole ulcer") or as it is called.
std::optional<Lesion> lesion_said(std::string_view words);

/// By its code in the ICAR Claw Health Atlas alone (docs/format/vocabulary.md says how well each is
/// known).
std::optional<Lesion> atlas_lesion(std::string_view code);

}  // namespace evenclaw
