// A farm walk: what was measured round the cows, each with what it is compared with, and its rows.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "core/base/date.hpp"
#include "core/base/enum_words.hpp"
#include "core/base/id.hpp"

namespace evenclaw {

enum class WalkMeasure {
  cow_weight,
  cow_height,
  cubicle_width,
  cubicle_length,
  cows,
  cubicles,
  passage_width,
  turn_width,
  floor,
  grip,
  scraping_interval,
  standing_time,
  footbath_length,
  footbath_width,
  footbath_depth,
  footbath_product,
  footbath_strength,
  footbath_passes,
  footbath_times
};

template <>
struct EnumWords<WalkMeasure> {
  static constexpr EnumWord<WalkMeasure> table[] = {
      {WalkMeasure::cow_weight, "cow_weight"},
      {WalkMeasure::cow_height, "cow_height"},
      {WalkMeasure::cubicle_width, "cubicle_width"},
      {WalkMeasure::cubicle_length, "cubicle_length"},
      {WalkMeasure::cows, "cows"},
      {WalkMeasure::cubicles, "cubicles"},
      {WalkMeasure::passage_width, "passage_width"},
      {WalkMeasure::turn_width, "turn_width"},
      {WalkMeasure::floor, "floor"},
      {WalkMeasure::grip, "grip"},
      {WalkMeasure::scraping_interval, "scraping_interval"},
      {WalkMeasure::standing_time, "standing_time"},
      {WalkMeasure::footbath_length, "footbath_length"},
      {WalkMeasure::footbath_width, "footbath_width"},
      {WalkMeasure::footbath_depth, "footbath_depth"},
      {WalkMeasure::footbath_product, "footbath_product"},
      {WalkMeasure::footbath_strength, "footbath_strength"},
      {WalkMeasure::footbath_passes, "footbath_passes"},
      {WalkMeasure::footbath_times, "footbath_times"}};
};

/// What the whole number of a measure counts. `said` has none: it is told in words.
enum class WalkUnit { said, mm, kg, count, minutes, tenths_of_percent, times_a_week };

template <>
struct EnumWords<WalkUnit> {
  static constexpr EnumWord<WalkUnit> table[] = {{WalkUnit::said, "said"},
                                                 {WalkUnit::mm, "mm"},
                                                 {WalkUnit::kg, "kg"},
                                                 {WalkUnit::count, "count"},
                                                 {WalkUnit::minutes, "minutes"},
                                                 {WalkUnit::tenths_of_percent, "tenths_of_percent"},
                                                 {WalkUnit::times_a_week, "times_a_week"}};
};

struct WalkMeasureFacts {
  WalkMeasure measure;
  std::string_view name;  // for people: "cubicle width"
  WalkUnit unit;
  std::int32_t least;  // nobody measures less or more: a slip, or another unit (our judgement)
  std::int32_t most;
  std::string_view compared_with;  // shown beside the value, never a verdict
  std::string_view source;         // of that; or that there is none
};

std::span<const WalkMeasureFacts> all_walk_measures();
const WalkMeasureFacts& facts_of(WalkMeasure measure);

/// "1.15 m", "180", "2 h", "5 %", "3 times a week"; "" for the unit `said`.
std::string said_value(WalkUnit unit, std::int32_t value);

/// One thing that was looked at, or said not to have been.
struct WalkMeasured {
  WalkMeasure measure = WalkMeasure::floor;
  std::optional<std::int32_t> value = {};      // in the unit of the measure
  std::string words;                           // floor, grip, product as said
  std::optional<std::int32_t> fitting = {};    // on how many of those looked at it was so
  std::optional<std::int32_t> looked_at = {};  // how many were looked at
  bool not_looked_at = false;                  // then there is no value
  bool mends = false;                          // instead of what was said of it before
  bool scrapped = false;                       // what was said of it is taken back

  friend bool operator==(const WalkMeasured&, const WalkMeasured&) = default;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("measure", &WalkMeasured::measure, "what was measured");
    visit("value", &WalkMeasured::value, "in the unit of the measure");
    visit("words", &WalkMeasured::words, "floor, grip or product as said");
    visit("fitting", &WalkMeasured::fitting, "on how many of those looked at it was so");
    visit("looked_at", &WalkMeasured::looked_at, "how many were looked at");
    visit("not_looked_at", &WalkMeasured::not_looked_at, "nobody looked, so there is no value");
    visit("mends", &WalkMeasured::mends, "instead of what was said of it before");
    visit("scrapped", &WalkMeasured::scrapped, "what was said of it is taken back");
  }
};

/// A walk, from herd, day and the place it was through.
VisitId walk_id(HerdId herd, Day day, std::string_view place);

struct FarmWalkRow {
  static constexpr std::string_view table = "farm_walk";
  static constexpr int key_columns = 3;
  HerdId herd;
  VisitId walk;
  std::int32_t position = 0;
  Day day;
  std::string place;
  WalkMeasure measure = WalkMeasure::floor;
  WalkUnit unit = WalkUnit::said;
  std::optional<std::int32_t> value;
  std::string words;
  std::optional<std::int32_t> fitting;
  std::optional<std::int32_t> looked_at;
  bool not_looked_at = false;
  bool twice = false;
  EntryId entry;
  PersonId walker;
  PersonId writer;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("herd", &FarmWalkRow::herd, "herd");
    visit("walk", &FarmWalkRow::walk, "derived from herd, day and place");
    visit("position", &FarmWalkRow::position, "place within the walk, from 1");
    visit("day", &FarmWalkRow::day, "day of the walk");
    visit("place", &FarmWalkRow::place, "which part of the farm, as said; empty: all of it");
    visit("measure", &FarmWalkRow::measure, "what was measured");
    visit("unit", &FarmWalkRow::unit, "what the value counts");
    visit("value", &FarmWalkRow::value,
          "the value; absent where it is said in words or nobody "
          "looked");
    visit("words", &FarmWalkRow::words, "floor, grip or product as said");
    visit("fitting", &FarmWalkRow::fitting, "on how many of those looked at it was so");
    visit("looked_at", &FarmWalkRow::looked_at, "how many were looked at");
    visit("not_looked_at", &FarmWalkRow::not_looked_at, "nobody looked, so there is no value");
    visit("twice", &FarmWalkRow::twice, "said twice in different ways; nobody chose yet");
    visit("entry", &FarmWalkRow::entry, "the entry that told it");
    visit("walker", &FarmWalkRow::walker, "who looked");
    visit("writer", &FarmWalkRow::writer, "who typed");
  }
};

}  // namespace evenclaw
