#include "demo/farm.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <string_view>

#include "demo/parameters.hpp"
#include "demo/streams.hpp"

namespace evenclaw::demo {

namespace {

// Made up; should a farm be called so somewhere, it is not meant.
constexpr std::array<std::string_view, 16> first_parts = {
    "Quill", "Bram",   "Otter", "Hazel",  "Wren",   "Marl", "Thistle", "Sedge",
    "Larch", "Pebble", "Finch", "Willow", "Copper", "Rush", "Juniper", "Harrow"};
constexpr std::array<std::string_view, 13> last_parts = {"moor",  "beck",  "combe", "holt", "mere",
                                                         "croft", "fold",  "garth", "shaw", "stead",
                                                         "wick",  "hurst", "dale"};

/// 16 and 13 have no divisor in common, so 208 names pass before one comes again.
std::string name_of(int index) {
  const auto at = static_cast<std::size_t>(index);
  std::string name(first_parts[at % first_parts.size()]);
  name += last_parts[at % last_parts.size()];
  if (at >= first_parts.size() * last_parts.size()) {
    name += " " + std::to_string(at / (first_parts.size() * last_parts.size()) + 1);
  }
  return name + " (invented)";
}

/// Sizes lie evenly on a log scale whichever farms are taken: steps of the golden ratio.
int size_of(int index, double shift) {
  constexpr double golden = 0.6180339887498949;
  const double smallest = value_of(Parameter::smallest_herd);
  const double largest = value_of(Parameter::largest_herd);
  const double u = std::fmod(shift + golden * index, 1.0);
  return static_cast<int>(std::lround(smallest * std::pow(largest / smallest, u)));
}

/// Rounds of a herd that is trimmed whole are half a year apart; of a larger one about a day's
/// work has come together. 50 cows a day at most (Cook, workshop); 2.2 passes a cow and year.
int weeks_between(int cows, Rhythm rhythm) {
  if (rhythm == Rhythm::whole_herd) return 26;
  constexpr double cows_a_day = 42;
  constexpr double passes_a_year = 2.2;
  const double weeks = cows_a_day / (cows * passes_a_year / 52.0);
  return std::clamp(static_cast<int>(std::lround(weeks)), 2, 8);
}

double times_of(Floor floor, double hard) {
  switch (floor) {
    case Floor::concrete:
      return hard;
    case Floor::rubber:
      return 1.0;
    case Floor::straw:
      return value_of(Parameter::straw_floor);
  }
  return 1.0;
}

double times_of(Bath bath) {
  switch (bath) {
    case Bath::none:
      return 1.0;
    case Bath::now_and_then:
      return value_of(Parameter::bath_now_and_then);
    case Bath::regular:
      return value_of(Parameter::bath_regular);
  }
  return 1.0;
}

/// One thing behind floor, bath and dirt: an old barn. Without it each is drawn by itself.
void draw_barn(Farm& farm, RandomStream& draws, bool is_correlated) {
  const double share = is_correlated ? value_of(Parameter::barn_correlation) : 0.0;
  const double old = draws.normal();
  const double rest = std::sqrt(1.0 - share * share);
  const double floor = share * old + rest * draws.normal();
  farm.dirt = share * old + rest * draws.normal();
  const double bath = -share * old + rest * draws.normal();
  farm.floor = floor > -0.3 ? Floor::concrete : floor > -1.1 ? Floor::rubber : Floor::straw;
  farm.bath = bath > 0.5 ? Bath::regular : bath > -0.4 ? Bath::now_and_then : Bath::none;
}

Season season_drawn(double u) {
  if (u < 0.65) return Season::all_year;
  return u < 0.85 ? Season::spring : Season::autumn;
}

}  // namespace

Farm invent_farm(std::uint64_t seed, int index, const Complications& complications) {
  RandomStream draws = stream_for(seed, DrawnFor::farm, index, 0);
  Farm farm;
  farm.index = index;
  farm.name = name_of(index);
  farm.cows = size_of(index, stream_for(seed, DrawnFor::farm, 0, 1).uniform());
  draw_barn(farm, draws, complications.has(Complication::correlated_exposures));
  farm.horn_effect = value_of(Parameter::horn_herd_spread) * draws.normal();
  farm.skin_effect = value_of(Parameter::skin_herd_spread) * draws.normal();
  farm.season_peak = 52.0 * draws.uniform();
  farm.calves = season_drawn(draws.uniform());
  constexpr int largest_trimmed_whole = 140;
  farm.rhythm = farm.cows <= largest_trimmed_whole ? Rhythm::whole_herd : Rhythm::part_of_herd;
  farm.weeks_between_visits = weeks_between(farm.cows, farm.rhythm);
  farm.weekday = static_cast<int>(draws.below(5));
  farm.callers = index % 3;
  farm.tells_what_was_done = !complications.has(Complication::tasks_never_told) || index % 3 != 1;
  return farm;
}

Pressure pressure_of(const Farm& farm, double week_of_year) {
  constexpr double two_pi = 6.283185307179586;
  const double season = std::exp(value_of(Parameter::season_swing) *
                                 std::cos(two_pi * (week_of_year - farm.season_peak) / 52.18));
  const double horn = season * std::exp(farm.horn_effect);
  Pressure pressure;
  pressure.sole = horn * times_of(farm.floor, value_of(Parameter::hard_floor_sole));
  pressure.white_line = horn * times_of(farm.floor, value_of(Parameter::hard_floor_white_line));
  pressure.dirt = season * std::pow(value_of(Parameter::dirt_on_skin), farm.dirt);
  pressure.skin = pressure.dirt * std::exp(farm.skin_effect) * times_of(farm.bath);
  return pressure;
}

}  // namespace evenclaw::demo
