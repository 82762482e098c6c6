#include "demo/dermatitis.hpp"

#include <doctest/doctest.h>

#include <map>

#include "demo/parameters.hpp"

namespace evenclaw::demo {

TEST_CASE("the more feet have it the more catch it, unless it does not spread") {
  CHECK(chance_of_infection(0.5, true) > chance_of_infection(0.1, true));
  CHECK(chance_of_infection(0.5, false) == chance_of_infection(0.1, false));
  CHECK(chance_of_infection(0.0, true) ==
        doctest::Approx(value_of(Parameter::dd_from_outside)).epsilon(1e-9));
}

TEST_CASE("a foot left alone spends about 70 of 100 ill weeks in M4") {
  // Biemans 2018: about 70 %; Solano 2017: 36 of 58 cows, 62 %.
  RandomStream draws(3, 0);
  std::map<DdStage, int> weeks;
  int ill = 0;
  for (int foot = 0; foot < 400; ++foot) {
    Episodes episodes;
    FootState state;
    infect(state, {.cow = 1, .week = 0}, draws, episodes);
    for (int week = 1; is_infected(state.dd); ++week) {
      ++weeks[state.dd];
      ++ill;
      pass_week(state, SkinWeek{.cow = 1, .week = week}, draws, episodes);
    }
    CHECK(episodes.size() == 1);
    CHECK(episodes[0].end == EpisodeEnd::healed);
  }
  const double in_m4 = weeks[DdStage::m4] / static_cast<double>(ill);
  CHECK(in_m4 > 0.60);
  CHECK(in_m4 < 0.72);
}

TEST_CASE("who has it is not infected again") {
  RandomStream draws(3, 0);
  Episodes episodes;
  FootState foot;
  infect(foot, {}, draws, episodes);
  infect(foot, {}, draws, episodes);
  CHECK(episodes.size() == 1);
}

TEST_CASE("a treated raw sore may close to a scab; a chronic one and one left as it is do not") {
  RandomStream draws(3, 0);
  int closed = 0;
  for (int foot = 0; foot < 500; ++foot) {
    FootState state;
    state.dd = DdStage::m2;
    treat_sore(state, true, draws);
    closed += state.dd == DdStage::m3 ? 1 : 0;
  }
  CHECK(closed / 500.0 == doctest::Approx(0.58).epsilon(0.15));
  FootState chronic;
  chronic.dd = DdStage::m4;
  treat_sore(chronic, true, draws);
  CHECK(chronic.dd == DdStage::m4);
  FootState raw;
  raw.dd = DdStage::m2;
  for (int time = 0; time < 20; ++time) treat_sore(raw, false, draws);
  CHECK(raw.dd == DdStage::m2);
}

}  // namespace evenclaw::demo
