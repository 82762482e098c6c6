// The whole story of one invented farm: what was called at its visits, and the truth behind it.
#pragma once

#include <cstdint>
#include <functional>
#include <vector>

#include "core/base/date.hpp"
#include "demo/called.hpp"
#include "demo/caller.hpp"
#include "demo/change.hpp"
#include "demo/complication.hpp"
#include "demo/farm.hpp"
#include "demo/herd.hpp"
#include "demo/look.hpp"

namespace evenclaw::demo {

/// Before the first visit that is recorded each herd lives on for so many weeks, trimmed but not
/// recorded, so that it does not begin with sound feet.
inline constexpr int weeks_before_records = 104;

struct BusinessWanted {
  std::uint64_t seed = 1;
  int farms = 12;
  int weeks = 156;  // that are recorded
  Day last_day;     // the day on which the story ends; no visit lies after it
  Complications complications;
};

/// The day on which a week of the story begins; week 0 is the first of those before the records.
Day first_day_of_week(const BusinessWanted& wanted, int week);

struct HerdStory {
  Farm farm;
  std::vector<CalledVisit> visits;  // those that are recorded, in order
  std::vector<Change> changes;
  Looks looks;  // of recorded visits
  Herd herd;    // as it stands at the end, with its episodes
};

/// Follows from (wanted, index) alone, whatever other farms there are. `each_week` is called with
/// the herd after every week that is recorded; it may be empty.
HerdStory tell_story(const BusinessWanted& wanted, int index,
                     const std::function<void(const Herd&, int week)>& each_week = {});

/// The callers of the business.
std::vector<Caller> callers_of(const BusinessWanted& wanted);

}  // namespace evenclaw::demo
