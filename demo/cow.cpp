#include "demo/cow.hpp"

#include <algorithm>
#include <cmath>

#include "demo/parameters.hpp"
#include "demo/streams.hpp"

namespace evenclaw::demo {

namespace {

double share_that_leaves(int lactation) {
  switch (lactation) {
    case 1:
      return value_of(Parameter::leaves_in_lactation_1);
    case 2:
      return value_of(Parameter::leaves_in_lactation_2);
    case 3:
      return value_of(Parameter::leaves_in_lactation_3);
    default:
      return value_of(Parameter::leaves_in_lactation_4);
  }
}

int weeks_to_next_calving(const Farm& farm, RandomStream& draws) {
  const bool in_season = farm.calves != Season::all_year;
  const double mean =
      value_of(in_season ? Parameter::calving_interval_in_season : Parameter::calving_interval);
  // A season holds herds together, so that half the spread is left.
  const double spread = value_of(Parameter::calving_interval_spread) * (in_season ? 0.5 : 1.0);
  const double drawn = mean + spread * draws.normal();
  return static_cast<int>(std::lround(std::clamp(drawn, 46.0, 80.0)));
}

double horn_times_of_lactation(int lactation) {
  if (lactation == 1) return value_of(Parameter::horn_lactation_1);
  if (lactation == 2) return 1.0;
  return value_of(lactation == 3 ? Parameter::horn_lactation_3 : Parameter::horn_lactation_4);
}

double horn_times_of_stage(const Cow& cow, int week) {
  constexpr int early_weeks = 6;
  constexpr int peak_weeks = 17;
  if (is_dry(cow, week)) return value_of(Parameter::horn_dry);
  const int in_milk = weeks_in_milk(cow, week);
  if (in_milk <= early_weeks) return value_of(Parameter::horn_early_milk);
  return in_milk <= peak_weeks ? value_of(Parameter::horn_peak) : 1.0;
}

}  // namespace

Cow first_calved(std::uint64_t seed, const Farm& farm, int number, int week) {
  const auto index = static_cast<std::uint32_t>(number);
  Cow cow;
  cow.life = stream_for(seed, DrawnFor::cow_life, farm.index, index);
  cow.steps = stream_for(seed, DrawnFor::cow_feet, farm.index, index);
  cow.number = number;
  const double age = value_of(Parameter::first_calving_age) + 6.0 * cow.life.normal();
  cow.born = week - static_cast<int>(std::lround(std::max(age, 90.0)));
  cow.horn_frailty = std::exp(value_of(Parameter::horn_cow_spread) * cow.life.normal());
  cow.skin_frailty = std::exp(value_of(Parameter::skin_cow_spread) * cow.life.normal());
  calve(cow, farm, week);
  return cow;
}

void calve(Cow& cow, const Farm& farm, int week) {
  cow.calvings.push_back(week);
  const int interval = weeks_to_next_calving(farm, cow.life);
  const bool goes = cow.life.chance(share_that_leaves(lactation_of(cow)));
  const double when = cow.life.uniform();
  if (goes) {
    // From the first weeks to well beyond the usual end of a lactation.
    constexpr double soonest = 4;
    constexpr double latest = 62;
    cow.leaves = week + static_cast<int>(soonest + (latest - soonest) * when);
    cow.left = LeftBecause::end_of_lactation;
    cow.dry_from = never;
    cow.next_calving = never;
    return;
  }
  cow.leaves = never;
  cow.next_calving = week + interval;
  cow.dry_from = cow.next_calving - static_cast<int>(value_of(Parameter::dry_weeks));
}

double horn_rate(const Cow& cow, int week) {
  return cow.horn_frailty * horn_times_of_lactation(lactation_of(cow)) *
         horn_times_of_stage(cow, week);
}

double skin_rate(const Cow& cow, int week) {
  constexpr int late_from_week = 14;  // day 100
  const int lactation = lactation_of(cow);
  if (lactation >= 3) return cow.skin_frailty * value_of(Parameter::dd_lactation_3);
  if (lactation == 2) return cow.skin_frailty;
  const bool is_late = weeks_in_milk(cow, week) >= late_from_week;
  return cow.skin_frailty * value_of(Parameter::dd_lactation_1) *
         (is_late ? value_of(Parameter::dd_lactation_1_late) : 1.0);
}

}  // namespace evenclaw::demo
