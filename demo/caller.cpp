#include "demo/caller.hpp"

#include <cassert>
#include <cmath>

#include "demo/parameters.hpp"
#include "demo/streams.hpp"

namespace evenclaw::demo {

namespace {

double with_log_odds(double chance, double added) {
  return 1.0 / (1.0 + (1.0 - chance) / chance * std::exp(-added));
}

double usual_chance(Degree degree) {
  switch (degree) {
    case Degree::not_called:
    case Degree::slight:
      return value_of(Parameter::sees_slight);
    case Degree::plain:
      return value_of(Parameter::sees_plain);
    case Degree::bad:
      return value_of(Parameter::sees_bad);
  }
  return 0.0;
}

}  // namespace

std::vector<Caller> invent_callers(std::uint64_t seed, const Complications& complications,
                                   int first_week, int weeks) {
  RandomStream draws = stream_for(seed, DrawnFor::crush, 0, 0);
  const double spread = value_of(Parameter::caller_spread);
  const int last = first_week + weeks;
  const int middle = first_week + weeks / 2;
  std::vector<Caller> callers = {
      {"Marit", "Fenja", 0, first_week, last, spread * draws.normal(), 0, true, true},
      {"Tewes", "Runa", 1, first_week, last, spread * draws.normal(), 0, false, true},
      {"Osgar", "Linnea", 2, first_week, last, spread * draws.normal(), 0, false, true},
      {"Ilka", "Runa", 1, middle, last, 0, 0, true, true}};
  if (complications.has(Complication::caller_drifts)) {
    callers[0].drift_a_year = value_of(Parameter::drift_a_year);
  }
  callers[2].writes_sound_feet = !complications.has(Complication::sound_feet_not_written);
  if (complications.has(Complication::caller_replaced)) {
    // The one who follows sees a good deal more or less.
    constexpr double step = 0.8;
    callers[1].to_week = middle;
    callers[3].keenness = callers[1].keenness + (draws.chance(0.5) ? step : -step);
  } else {
    callers.pop_back();
  }
  return callers;
}

const Caller& caller_of(std::span<const Caller> callers, int crew, int week) {
  assert(!callers.empty());
  const Caller* earliest = nullptr;
  for (const Caller& caller : callers) {
    if (caller.crew != crew) continue;
    if (week >= caller.from_week && week < caller.to_week) return caller;
    if (earliest == nullptr) earliest = &caller;
  }
  return earliest == nullptr ? callers.front() : *earliest;
}

double chance_to_see(const Caller& caller, Degree degree, double years) {
  const double drift = degree == Degree::slight ? caller.drift_a_year * years : 0.0;
  return with_log_odds(usual_chance(degree), caller.keenness + drift);
}

double chance_to_see(const Caller& caller, DdStage stage, double years) {
  switch (stage) {
    case DdStage::m2:
      return chance_to_see(caller, Degree::bad, years);
    case DdStage::m1:
    case DdStage::m3:
    case DdStage::m4_1:
      return chance_to_see(caller, Degree::plain, years);
    case DdStage::m4:
      return with_log_odds(value_of(Parameter::sees_chronic_dd),
                           caller.keenness + caller.drift_a_year * years);
    case DdStage::m0:
    case DdStage::not_called:
    case DdStage::raw:
    case DdStage::scab:
    case DdStage::chronic:
      return 0.0;
  }
  return 0.0;
}

DdStage as_called(const Caller& caller, DdStage stage) {
  if (caller.says_stage_by_number) return stage;
  switch (stage) {
    case DdStage::m1:
    case DdStage::m2:
    case DdStage::m4_1:
      return DdStage::raw;
    case DdStage::m3:
      return DdStage::scab;
    case DdStage::m4:
      return DdStage::chronic;
    case DdStage::m0:
    case DdStage::not_called:
    case DdStage::raw:
    case DdStage::scab:
    case DdStage::chronic:
      return stage;
  }
  return stage;
}

}  // namespace evenclaw::demo
