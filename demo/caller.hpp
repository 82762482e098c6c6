// Who calls at the crush, and how much of what is there each of them sees.
#pragma once

#include <cstdint>
#include <span>
#include <string_view>
#include <vector>

#include "core/trade/dd_stage.hpp"
#include "core/trade/lesion.hpp"
#include "demo/complication.hpp"

namespace evenclaw::demo {

/// Names are invented.
struct Caller {
  std::string_view name;
  std::string_view writer = {};  // who types what is called
  int crew = 0;                  // goes to the farms whose `callers` is that
  int from_week = 0;             // of the story, and the first week without: `to_week`
  int to_week = 0;
  double keenness = 0;                // log odds added to the chance of seeing
  double drift_a_year = 0;            // added to that for slight lesions, each year
  bool says_stage_by_number = false;  // "M2", else "raw"
  bool writes_sound_feet = true;
};

/// The callers of the business for a story of so many weeks, by crew.
std::vector<Caller> invent_callers(std::uint64_t seed, const Complications& complications,
                                   int first_week, int weeks);

/// Who calls for a crew in that week.
const Caller& caller_of(std::span<const Caller> callers, int crew, int week);

/// The chance that she calls a lesion of that degree, `years` after the business began.
double chance_to_see(const Caller& caller, Degree degree, double years);

/// The same of digital dermatitis in that stage; 0 of M0.
double chance_to_see(const Caller& caller, DdStage stage, double years);

/// The stage in her words.
DdStage as_called(const Caller& caller, DdStage stage);

}  // namespace evenclaw::demo
