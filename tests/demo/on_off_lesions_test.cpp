#include "demo/on_off_lesions.hpp"

#include <doctest/doctest.h>

namespace evenclaw::demo {

TEST_CASE("every lesion of the table has a source, stands in its place and can be called there") {
  for (const OnOffFacts& facts : all_on_off_lesions()) {
    CHECK(&facts_of(facts.which) == &facts);
    CHECK(!facts.source.empty());
    CHECK((!facts.has_claw || may_have_claw(facts.lesion)));
    CHECK(facts.heals_treated > facts.heals);
  }
}

TEST_CASE("foul goes with treatment sooner than without") {
  RandomStream draws(4, 0);
  int weeks_alone = 0;
  int weeks_treated = 0;
  for (int foot = 0; foot < 300; ++foot) {
    for (const bool is_treated : {false, true}) {
      Episodes episodes;
      FootState state;
      begin_lesion(state, facts_of(OnOff::foul), {.cow = 1}, draws, episodes);
      OnOffState& foul = state.others[static_cast<std::size_t>(OnOff::foul)];
      CHECK(foul.is_there);
      foul.was_treated = is_treated;
      while (foul.is_there) {
        pass_week(state, OnOffWeek{.cow = 1, .week = 1}, draws, episodes);
        ++(is_treated ? weeks_treated : weeks_alone);
      }
    }
  }
  CHECK(weeks_treated < weeks_alone);
}

TEST_CASE("a double sole lies on the outside claw behind and on the inside claw in front") {
  RandomStream draws(4, 0);
  Episodes episodes;
  FootState foot;
  begin_lesion(foot, facts_of(OnOff::double_sole), {.foot = Foot::rh}, draws, episodes);
  FootState front;
  begin_lesion(front, facts_of(OnOff::double_sole), {.foot = Foot::lf}, draws, episodes);
  CHECK(episodes.at(0).claw == Claw::outside);
  CHECK(episodes.at(1).claw == Claw::inside);
}

}  // namespace evenclaw::demo
