#include "demo/herd.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <set>

namespace evenclaw::demo {

namespace {

Farm small_farm(Season season) {
  Farm farm = invent_farm(6, 3, {});
  farm.cows = 80;
  farm.calves = season;
  return farm;
}

Herd lived(const Farm& farm, int weeks) {
  Herd herd(6, farm, {}, 1.0);
  for (int week = 0; week < weeks; ++week) {
    herd.pass_week(week, pressure_of(farm, herd.week_of_year(week)));
  }
  return herd;
}

}  // namespace

TEST_CASE("a herd keeps its size, and no number is given twice") {
  const Herd herd = lived(small_farm(Season::all_year), 150);
  CHECK(herd.cows().size() > 70);
  CHECK(herd.cows().size() <= 80);
  std::set<int> numbers;
  for (const Cow& cow : herd.cows()) CHECK(numbers.insert(cow.number).second);
  for (const Gone& gone : herd.gone()) CHECK(numbers.insert(gone.number).second);
  CHECK(herd.gone().size() > 40);
}

TEST_CASE("about a third of a herd is in its first lactation, from the first week on") {
  const auto first_share = [](const Herd& herd) {
    int first = 0;
    for (const Cow& cow : herd.cows()) first += lactation_of(cow) == 1 ? 1 : 0;
    return first / static_cast<double>(herd.cows().size());
  };
  Farm farm = small_farm(Season::all_year);
  farm.cows = 300;
  CHECK(first_share(lived(farm, 0)) == doctest::Approx(0.32).epsilon(0.3));
  CHECK(first_share(lived(farm, 100)) == doctest::Approx(0.32).epsilon(0.3));
}

TEST_CASE("a spring herd calves in spring") {
  const Farm farm = small_farm(Season::spring);
  const Herd herd = lived(farm, 120);
  int in_spring = 0;
  int all = 0;
  for (const Cow& cow : herd.cows()) {
    for (const int calving : cow.calvings) {
      if (calving < 0) continue;
      const double from_middle = std::remainder(herd.week_of_year(calving) - 10.0, 52.18);
      in_spring += std::fabs(from_middle) <= 10 ? 1 : 0;
      ++all;
    }
  }
  CHECK(all > 50);
  CHECK(in_spring > all * 9 / 10);
}

TEST_CASE("episodes end after they began, and those of a cow that left end with her") {
  const Herd herd = lived(small_farm(Season::all_year), 150);
  std::set<int> gone;
  for (const Gone& cow : herd.gone()) gone.insert(cow.number);
  int ended_by_leaving = 0;
  for (const Episode& episode : herd.episodes()) {
    CHECK((episode.ended < 0) == (episode.end == EpisodeEnd::still_there));
    if (episode.ended >= 0) CHECK(episode.ended >= episode.began);
    if (episode.end == EpisodeEnd::still_there) CHECK(gone.count(episode.cow) == 0);
    ended_by_leaving += episode.end == EpisodeEnd::cow_left ? 1 : 0;
  }
  CHECK(ended_by_leaving > 0);
}

TEST_CASE("a cow is found by her number while she is in the herd") {
  Herd herd = lived(small_farm(Season::all_year), 60);
  const int number = herd.cows().back().number;
  REQUIRE(herd.find(number) != nullptr);
  CHECK(herd.find(number)->number == number);
  CHECK(herd.find(herd.gone().front().number) == nullptr);
}

TEST_CASE("a plain ulcer and a big raw sore make lame, a slight ulcer and a chronic one do not") {
  FootState foot;
  foot.dd = DdStage::m4;
  foot.claws[0].horn[0].stage = HornStage::late;
  foot.claws[0].horn[0].degree = Degree::slight;
  CHECK(!is_lame_on(foot));
  foot.claws[0].horn[0].degree = Degree::plain;
  CHECK(is_lame_on(foot));
  foot.claws[0] = {};
  foot.dd = DdStage::m2;
  CHECK(is_lame_on(foot));
}

}  // namespace evenclaw::demo
