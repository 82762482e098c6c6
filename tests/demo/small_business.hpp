// A business that is told and recorded in a moment, for tests.
#pragma once

#include "core/api/business.hpp"
#include "core/api/ports.hpp"
#include "demo/recorder.hpp"
#include "demo/story.hpp"
#include "demo/story_device.hpp"
#include "store/memory/memory_directory.hpp"
#include "store/memory/memory_store.hpp"

namespace evenclaw::demo {

/// `index` of a farm below 100 cows in the business of seed 1.
inline constexpr int small_farm_index = 3;

inline BusinessWanted half_a_year() {
  BusinessWanted wanted;
  wanted.seed = 1;
  wanted.farms = 4;
  wanted.weeks = 30;
  wanted.last_day = *day_from_text("2026-11-22");
  return wanted;
}

/// The records of one farm in memory.
struct RecordedFarm {
  explicit RecordedFarm(const BusinessWanted& wanted, int index = small_farm_index)
      : ids(wanted.seed, index, first_day_of_week(wanted, 0)) {
    clock.begin(first_day_of_week(wanted, weeks_before_records));
    REQUIRE(ready_business(ports(), "tablet").ok());
    REQUIRE(enter_people(ports(), wanted).ok());
  }

  Ports ports() { return {store, directory, clock, ids}; }

  MemoryStore store;
  MemoryDirectory directory;
  StoryClock clock;
  StoryIds ids;
};

}  // namespace evenclaw::demo
