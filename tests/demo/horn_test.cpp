#include "demo/horn.hpp"

#include <doctest/doctest.h>

#include <cmath>

#include "demo/parameters.hpp"

namespace evenclaw::demo {

namespace {

HornState late(Degree degree, Episodes& episodes) {
  HornState horn;
  horn.stage = HornStage::late;
  horn.degree = degree;
  horn.episode = begin_episode(episodes, {.cow = 1, .lesion = Lesion::su});
  return horn;
}

/// The share of a thousand ulcers that is gone after five weeks.
double healed_in_five_weeks(bool is_trimmed, bool is_blocked) {
  constexpr int claws = 1000;
  RandomStream draws(11, 0);
  int healed = 0;
  for (int claw = 0; claw < claws; ++claw) {
    Episodes episodes;
    HornState horn = late(Degree::plain, episodes);
    horn.was_trimmed = is_trimmed;
    for (int week = 1; week <= 5; ++week) {
      HornWeek of_week{.cow = 1, .week = week};
      of_week.is_unloaded = is_blocked;
      pass_week(horn, of_week, draws, episodes);
    }
    healed += horn.stage == HornStage::sound ? 1 : 0;
  }
  return healed / static_cast<double>(claws);
}

}  // namespace

TEST_CASE("ulcers heal in five weeks as often as in the trials, more with trim and block") {
  // 1000 claws: SD 0.015.
  CHECK(healed_in_five_weeks(false, false) == doctest::Approx(0.096).epsilon(0.6));
  CHECK(std::fabs(healed_in_five_weeks(true, false) - 0.244) < 0.05);
  CHECK(std::fabs(healed_in_five_weeks(true, true) - 0.359) < 0.05);
}

TEST_CASE("a bruise begins slight, may become an ulcer, and both are one episode") {
  RandomStream draws(2, 0);
  Episodes episodes;
  HornState horn;
  begin_lesion(horn, {.cow = 7, .week = 1, .claw = Claw::outside}, episodes);
  CHECK(horn.degree == Degree::slight);
  CHECK(episodes.at(0).lesion == Lesion::sh);
  for (int week = 2; horn.stage != HornStage::sound; ++week) {
    pass_week(horn, {.cow = 7, .week = week, .claw = Claw::outside}, draws, episodes);
  }
  CHECK(episodes.size() == 1);
  CHECK(episodes[0].end == EpisodeEnd::healed);
  CHECK(episodes[0].ended > episodes[0].began);
  CHECK((episodes[0].lesion == Lesion::su) == (episodes[0].worse_since >= 0));
}

TEST_CASE("what healed is remembered: the next one there is a relapse") {
  Episodes episodes;
  HornState horn;
  horn.was_there_before = true;
  begin_lesion(horn, {.cow = 7, .week = 9}, episodes);
  CHECK(episodes.at(0).is_relapse);
}

TEST_CASE("a trim makes a bad lesion plain, and nothing where treatment resets nothing") {
  Episodes episodes;
  HornState horn = late(Degree::bad, episodes);
  trim_lesion(horn, false);
  CHECK(horn.degree == Degree::bad);
  CHECK(!horn.was_trimmed);
  trim_lesion(horn, true);
  CHECK(horn.degree == Degree::plain);
  CHECK(horn.was_trimmed);
}

TEST_CASE("sound horn stays sound however many weeks pass over it") {
  RandomStream draws(2, 0);
  Episodes episodes;
  HornState horn;
  for (int week = 0; week < 100; ++week) pass_week(horn, {.week = week}, draws, episodes);
  CHECK(horn.stage == HornStage::sound);
  CHECK(episodes.empty());
}

TEST_CASE("most lesions lie on the outside claw behind and on the inside claw in front") {
  CHECK(rate_of_claw(Foot::lh, Claw::outside) > rate_of_claw(Foot::lh, Claw::inside));
  CHECK(rate_of_claw(Foot::rf, Claw::inside) > rate_of_claw(Foot::rf, Claw::outside));
  CHECK(rate_of_claw(Foot::rh, Claw::inside) > rate_of_claw(Foot::rf, Claw::inside));
}

}  // namespace evenclaw::demo
