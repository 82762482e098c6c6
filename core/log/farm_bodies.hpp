// The bodies of entries about the farm rather than about the feet of one cow.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/date.hpp"
#include "core/base/id.hpp"
#include "core/trade/farm_change.hpp"
#include "core/trade/farm_walk.hpp"
#include "core/trade/mobility_scoring.hpp"

namespace evenclaw {

// Each of them has an id of its own, which is its subject, and is pictured as a visit is: entries
// of one id add up in the total order.

/// A note that was shown; nothing had to be decided.
struct NoteShown {
  std::string rule;
  std::string words;

  friend bool operator==(const NoteShown&, const NoteShown&) = default;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("rule", &NoteShown::rule, "which it is");
    visit("words", &NoteShown::words, "as shown");
  }
};

/// What was said together of one scoring. It names no cow as a subject, for it changes no cow's
/// own picture.
struct MobilityScoring {
  static constexpr std::string_view kind = "mobility_scoring";
  static constexpr std::int32_t version = 1;
  VisitId scoring;
  Day day;
  MobilityScale scale = MobilityScale::zero_to_three;
  std::string animals;     // which were scored, as said; "" for the herd
  std::string watched_at;  // "" when not said
  std::optional<std::int32_t> present = {};
  std::vector<CowScored> cows = {};
  std::vector<CountScored> counted = {};
  std::vector<NoteShown> notes = {};
  std::vector<std::string> words = {};

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("scoring", &MobilityScoring::scoring, "derived from herd, day, scale and animals");
    visit("day", &MobilityScoring::day, "day they were watched");
    visit("scale", &MobilityScoring::scale, "scale of every score, never converted");
    visit("animals", &MobilityScoring::animals, "which animals, as said; empty: the herd");
    visit("watched_at", &MobilityScoring::watched_at, "where they were watched, as said");
    visit("present", &MobilityScoring::present, "how many were there");
    visit("cows", &MobilityScoring::cows, "cows called by number");
    visit("counted", &MobilityScoring::counted, "animals counted at a score");
    visit("notes", &MobilityScoring::notes, "notes shown while it was recorded");
    visit("words", &MobilityScoring::words, "the lines as said");
  }
};

/// What was said together of one walk through one place.
struct FarmWalk {
  static constexpr std::string_view kind = "farm_walk";
  static constexpr std::int32_t version = 1;
  VisitId walk;
  Day day;
  std::string place;  // "" for the whole farm
  std::vector<WalkMeasured> measured = {};
  std::vector<std::string> words = {};

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("walk", &FarmWalk::walk, "derived from herd, day and place");
    visit("day", &FarmWalk::day, "day of the walk");
    visit("place", &FarmWalk::place, "which part of the farm, as said; empty: all of it");
    visit("measured", &FarmWalk::measured, "what was looked at");
    visit("words", &FarmWalk::words, "the lines as said");
  }
};

/// What was told of one change. Told again it adds to what is known; what is told otherwise holds.
struct FarmChange {
  static constexpr std::string_view kind = "change";
  static constexpr std::int32_t version = 1;
  VisitId change;
  Day day;
  ChangeDriver driver = ChangeDriver::other;
  std::string altered;
  ChangeTold told;
  bool scrapped = false;
  std::vector<std::string> words = {};

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("change", &FarmChange::change, "derived from herd, what, whom and since when");
    visit("day", &FarmChange::day, "day it was told");
    visit("driver", &FarmChange::driver, "what was altered");
    visit("altered", &FarmChange::altered, "how, as said");
    visit("told", &FarmChange::told, "what was told of it");
    visit("scrapped", &FarmChange::scrapped, "there was no such change");
    visit("words", &FarmChange::words, "the lines as said");
  }
};

}  // namespace evenclaw
