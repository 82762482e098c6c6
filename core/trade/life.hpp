// What happens to a cow apart from her feet: she arrives, calves, is dried off, leaves.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "core/base/date.hpp"
#include "core/base/digest.hpp"
#include "core/base/enum_words.hpp"
#include "core/base/id.hpp"

namespace evenclaw {

enum class LifeEvent { arrived, calved, dried_off, left };

template <>
struct EnumWords<LifeEvent> {
  static constexpr EnumWord<LifeEvent> table[] = {{LifeEvent::arrived, "arrived"},
                                                  {LifeEvent::calved, "calved"},
                                                  {LifeEvent::dried_off, "dried_off"},
                                                  {LifeEvent::left, "left"}};
};

/// How a cow left the herd.
enum class LeavingWay { not_told, sold, slaughtered, died };

template <>
struct EnumWords<LeavingWay> {
  static constexpr EnumWord<LeavingWay> table[] = {{LeavingWay::not_told, "not_told"},
                                                   {LeavingWay::sold, "sold"},
                                                   {LeavingWay::slaughtered, "slaughtered"},
                                                   {LeavingWay::died, "died"}};
};

/// Why she left. The reasons that ICAR ADE tells apart (icarDepartureReasonType and
/// icarDeathReasonType), in our words.
enum class LeavingReason {
  not_told,
  age,
  surplus,
  feet_and_legs,
  nutrition,
  calving,
  udder,
  fertility,
  health,
  production,
  milking,
  conformation,
  behaviour,
  accident,
  missing,
  other
};

template <>
struct EnumWords<LeavingReason> {
  static constexpr EnumWord<LeavingReason> table[] = {
      {LeavingReason::not_told, "not_told"},   {LeavingReason::age, "age"},
      {LeavingReason::surplus, "surplus"},     {LeavingReason::feet_and_legs, "feet_and_legs"},
      {LeavingReason::nutrition, "nutrition"}, {LeavingReason::calving, "calving"},
      {LeavingReason::udder, "udder"},         {LeavingReason::fertility, "fertility"},
      {LeavingReason::health, "health"},       {LeavingReason::production, "production"},
      {LeavingReason::milking, "milking"},     {LeavingReason::conformation, "conformation"},
      {LeavingReason::behaviour, "behaviour"}, {LeavingReason::accident, "accident"},
      {LeavingReason::missing, "missing"},     {LeavingReason::other, "other"}};
};

/// One event; two of one kind on one day are the same event.
struct LifeEventTold {
  LifeEvent event = LifeEvent::calved;
  Day day;
  std::optional<std::int32_t> lactation = {};  // of a calving: the one it began, from 1
  LeavingWay way = LeavingWay::not_told;
  LeavingReason reason = LeavingReason::not_told;
  std::string words = {};  // why she left, as it was told

  friend bool operator==(const LifeEventTold&, const LifeEventTold&) = default;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("event", &LifeEventTold::event, "what happened");
    visit("day", &LifeEventTold::day, "the day it happened");
    visit("lactation", &LifeEventTold::lactation, "number of the lactation a calving began");
    visit("way", &LifeEventTold::way, "how she left");
    visit("reason", &LifeEventTold::reason, "why she left");
    visit("words", &LifeEventTold::words, "why she left, as it was told");
  }
};

/// The same thing that happened, whatever else is told of it.
inline bool is_same_event(const LifeEventTold& a, const LifeEventTold& b) {
  return a.event == b.event && a.day == b.day;
}

/// What happened to a cow; one row for each event.
struct CowLifeRow {
  static constexpr std::string_view table = "cow_life";
  static constexpr int key_columns = 4;
  HerdId herd;
  CowId cow;
  Day day;
  LifeEvent event = LifeEvent::calved;
  std::optional<std::int32_t> lactation;
  LeavingWay way = LeavingWay::not_told;
  LeavingReason reason = LeavingReason::not_told;
  std::string words;
  std::optional<std::string> source;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("herd", &CowLifeRow::herd, "herd");
    visit("cow", &CowLifeRow::cow, "cow");
    visit("day", &CowLifeRow::day, "the day it happened");
    visit("event", &CowLifeRow::event, "what happened");
    visit("lactation", &CowLifeRow::lactation, "number of the lactation a calving began");
    visit("way", &CowLifeRow::way, "how she left");
    visit("reason", &CowLifeRow::reason, "why she left");
    visit("words", &CowLifeRow::words, "why she left, as it was told");
    visit("source", &CowLifeRow::source, "SHA-256 of the file that told it first");
  }
};

/// What the row tells, without whose it is.
inline LifeEventTold event_of(const CowLifeRow& row) {
  return {row.event, row.day, row.lactation, row.way, row.reason, row.words};
}

}  // namespace evenclaw
