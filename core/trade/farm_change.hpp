// A change: something the farm altered, why, when it was decided and when it was finished.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "core/base/date.hpp"
#include "core/base/enum_words.hpp"
#include "core/base/id.hpp"

namespace evenclaw {

/// What bears on the feet and was altered: our own list of what a farm can change, common practice
/// without a source. `other` has its words alone.
enum class ChangeDriver {
  cubicles,
  bedding,
  floor,
  passages,
  tracks,
  stocking,
  scraping,
  standing_time,
  footbath,
  feeding,
  grazing,
  trimming,
  heifers,
  other
};

template <>
struct EnumWords<ChangeDriver> {
  static constexpr EnumWord<ChangeDriver> table[] = {
      {ChangeDriver::cubicles, "cubicles"}, {ChangeDriver::bedding, "bedding"},
      {ChangeDriver::floor, "floor"},       {ChangeDriver::passages, "passages"},
      {ChangeDriver::tracks, "tracks"},     {ChangeDriver::stocking, "stocking"},
      {ChangeDriver::scraping, "scraping"}, {ChangeDriver::standing_time, "standing_time"},
      {ChangeDriver::footbath, "footbath"}, {ChangeDriver::feeding, "feeding"},
      {ChangeDriver::grazing, "grazing"},   {ChangeDriver::trimming, "trimming"},
      {ChangeDriver::heifers, "heifers"},   {ChangeDriver::other, "other"}};
};

/// A change made after a bad visit is followed by better ones whether it helps or not (regression
/// to the mean), so whoever asks later whether it helped has to know why it was made.
enum class ChangeWhy { not_told, bad_visit, planned, vet_advised, rebuilt_anyway, other };

template <>
struct EnumWords<ChangeWhy> {
  static constexpr EnumWord<ChangeWhy> table[] = {{ChangeWhy::not_told, "not_told"},
                                                  {ChangeWhy::bad_visit, "bad_visit"},
                                                  {ChangeWhy::planned, "planned"},
                                                  {ChangeWhy::vet_advised, "vet_advised"},
                                                  {ChangeWhy::rebuilt_anyway, "rebuilt_anyway"},
                                                  {ChangeWhy::other, "other"}};
};

enum class ChangeState { not_told, going_on, finished };

template <>
struct EnumWords<ChangeState> {
  static constexpr EnumWord<ChangeState> table[] = {{ChangeState::not_told, "not_told"},
                                                    {ChangeState::going_on, "going_on"},
                                                    {ChangeState::finished, "finished"}};
};

enum class ChangeReach { not_told, whole_herd, group };

template <>
struct EnumWords<ChangeReach> {
  static constexpr EnumWord<ChangeReach> table[] = {{ChangeReach::not_told, "not_told"},
                                                    {ChangeReach::whole_herd, "whole_herd"},
                                                    {ChangeReach::group, "group"}};
};

/// What is told of a change; what is not told leaves what was told before.
struct ChangeTold {
  ChangeWhy why = ChangeWhy::not_told;
  std::string why_words;
  std::optional<Day> decided = {};
  ChangeState state = ChangeState::not_told;
  std::optional<Day> finished = {};
  ChangeReach reach = ChangeReach::not_told;
  std::string animals;  // of a group

  friend bool operator==(const ChangeTold&, const ChangeTold&) = default;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("why", &ChangeTold::why, "why it was made");
    visit("why_words", &ChangeTold::why_words, "why, in the words it was told in");
    visit("decided", &ChangeTold::decided, "day it was decided");
    visit("state", &ChangeTold::state, "whether it is finished");
    visit("finished", &ChangeTold::finished, "day from which it was whole");
    visit("reach", &ChangeTold::reach, "whom it concerns");
    visit("animals", &ChangeTold::animals, "which animals, when it is a group");
  }
};

/// A change, from herd, what was altered, how, for whom, and the day it was decided (or, where
/// nobody said, told).
struct ChangeNamed {
  ChangeDriver driver = ChangeDriver::other;
  std::string words;
  std::string animals;
  Day since;
};

VisitId change_id(HerdId herd, const ChangeNamed& named);

struct FarmChangeRow {
  static constexpr std::string_view table = "farm_change";
  static constexpr int key_columns = 2;
  HerdId herd;
  VisitId change;
  Day day;
  ChangeDriver driver = ChangeDriver::other;
  std::string words;
  ChangeWhy why = ChangeWhy::not_told;
  std::string why_words;
  std::optional<Day> decided;
  ChangeState state = ChangeState::not_told;
  std::optional<Day> finished;
  ChangeReach reach = ChangeReach::not_told;
  std::string animals;
  PersonId teller;
  PersonId writer;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("herd", &FarmChangeRow::herd, "herd");
    visit("change", &FarmChangeRow::change, "derived from herd, what, whom and since when");
    visit("day", &FarmChangeRow::day, "day it was first told");
    visit("driver", &FarmChangeRow::driver, "what was altered");
    visit("words", &FarmChangeRow::words, "how, as said");
    visit("why", &FarmChangeRow::why, "why it was made");
    visit("why_words", &FarmChangeRow::why_words, "why, in the words it was told in");
    visit("decided", &FarmChangeRow::decided, "day it was decided");
    visit("state", &FarmChangeRow::state, "whether it is finished");
    visit("finished", &FarmChangeRow::finished, "day from which it was whole");
    visit("reach", &FarmChangeRow::reach, "whom it concerns");
    visit("animals", &FarmChangeRow::animals, "which animals, when it is a group");
    visit("teller", &FarmChangeRow::teller, "who told it");
    visit("writer", &FarmChangeRow::writer, "who typed");
  }
};

}  // namespace evenclaw
