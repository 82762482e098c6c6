// What one line or one object of another program tells of a cow, whatever form it came in.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/base/date.hpp"
#include "core/trade/cow_facts.hpp"
#include "core/trade/life.hpp"
#include "core/trade/past_finding.hpp"

namespace evenclaw {

/// "" or nothing where it tells nothing. Numbers are as they stand there.
struct HerdRecord {
  int line = 0;
  std::string number = {};
  std::string tag = {};
  std::string electronic = {};
  std::string name = {};
  std::string breed = {};
  std::optional<Day> born = {};
  std::optional<HeiferOrCow> heifer_or_cow = {};
  std::optional<WeightClass> weight = {};
  std::optional<std::int32_t> lactation = {};  // of which no calving is told
  std::optional<Day> dry_off = {};             // she is to be dried off
  std::optional<Day> due_to_calve = {};
  std::vector<LifeEventTold> events = {};
  std::optional<PastFinding> finding = {};
  /// The line stands in a list of findings and tells of none on this day.
  std::optional<Day> passed_over_on = {};
  /// It tells of one event or finding and no more, so that another line may tell of her too.
  bool is_one_event = false;
  /// The same of all records of one animal, where a file says so without a number that stays hers.
  std::string animal = {};
};

}  // namespace evenclaw
