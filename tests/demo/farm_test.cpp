#include "demo/farm.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <set>
#include <vector>

#include "demo/parameters.hpp"

namespace evenclaw::demo {

namespace {

constexpr int many = 200;

std::vector<Farm> many_farms(const Complications& complications = {}) {
  std::vector<Farm> farms;
  for (int index = 0; index < many; ++index) farms.push_back(invent_farm(7, index, complications));
  return farms;
}

/// How much more dirt lies where the floor is hard.
double more_dirt_on_concrete(const std::vector<Farm>& farms) {
  double on_concrete = 0;
  double elsewhere = 0;
  int concrete = 0;
  for (const Farm& farm : farms) {
    concrete += farm.floor == Floor::concrete ? 1 : 0;
    (farm.floor == Floor::concrete ? on_concrete : elsewhere) += farm.dirt;
  }
  return on_concrete / concrete - elsewhere / (many - concrete);
}

}  // namespace

TEST_CASE("herds have 60 to 600 cows, and a dozen of them reaches from small to large") {
  int small = 0;
  int large = 0;
  for (const Farm& farm : many_farms()) {
    CHECK(farm.cows >= 60);
    CHECK(farm.cows <= 600);
    if (farm.index >= 12) continue;
    small += farm.cows < 100 ? 1 : 0;
    large += farm.cows > 400 ? 1 : 0;
  }
  CHECK(small >= 2);
  CHECK(large >= 2);
}

TEST_CASE("every farm of two hundred has a name of its own that says that it is invented") {
  std::set<std::string> names;
  for (const Farm& farm : many_farms()) {
    CHECK(names.insert(farm.name).second);
    CHECK(farm.name.find("(invented)") != std::string::npos);
  }
}

TEST_CASE("a hard floor and dirt come together, unless exposures are not correlated") {
  Complications apart;
  apart.leave_out(Complication::correlated_exposures);
  CHECK(more_dirt_on_concrete(many_farms()) > 0.4);
  CHECK(std::fabs(more_dirt_on_concrete(many_farms(apart))) < 0.4);
}

TEST_CASE("concrete makes as many more lesions than rubber as the published odds say") {
  Farm farm = invent_farm(7, 0, {});
  farm.floor = Floor::rubber;
  const Pressure rubber = pressure_of(farm, 20);
  farm.floor = Floor::concrete;
  const Pressure concrete = pressure_of(farm, 20);
  CHECK(concrete.sole / rubber.sole == doctest::Approx(2.2));
  CHECK(concrete.white_line / rubber.white_line == doctest::Approx(2.8));
  CHECK(concrete.skin == rubber.skin);
}

TEST_CASE("on one farm in three nobody tells what was done, unless that is left out") {
  Complications told;
  told.leave_out(Complication::tasks_never_told);
  int silent = 0;
  for (const Farm& farm : many_farms()) silent += farm.tells_what_was_done ? 0 : 1;
  CHECK(silent == doctest::Approx(many / 3.0).epsilon(0.02));
  for (const Farm& farm : many_farms(told)) CHECK(farm.tells_what_was_done);
}

TEST_CASE("the season turns once a year and changes no yearly mean by much") {
  const Farm farm = invent_farm(3, 2, {});
  double most = 0;
  double least = 1e9;
  for (int week = 0; week < 52; ++week) {
    const double sole = pressure_of(farm, week).sole;
    most = std::max(most, sole);
    least = std::min(least, sole);
  }
  const double swing = value_of(Parameter::season_swing);
  CHECK(most / least == doctest::Approx(std::exp(2 * swing)).epsilon(0.02));
}

}  // namespace evenclaw::demo
