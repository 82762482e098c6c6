#include "core/trade/mobility.hpp"

#include <doctest/doctest.h>

#include <algorithm>

using namespace evenclaw;

namespace {

int count_of(MobilityScale scale) {
  const auto all = all_mobility_scores();
  return static_cast<int>(std::count_if(
      all.begin(), all.end(), [&](const MobilityFacts& facts) { return facts.scale == scale; }));
}

}  // namespace

TEST_CASE("each scale has all its scores, each with a name and what is seen") {
  for (const MobilityScaleFacts& scale : all_mobility_scales()) {
    CHECK(&facts_of(scale.scale) == &scale);
    CHECK_FALSE(scale.source.empty());
    CHECK(count_of(scale.scale) == scale.highest - scale.lowest + 1);
    int expected = scale.lowest;
    for (const MobilityFacts& facts : all_mobility_scores()) {
      if (facts.scale != scale.scale) continue;
      CHECK(facts.score == expected++);
      CHECK_FALSE(facts.name.empty());
      CHECK_FALSE(facts.seen.empty());
    }
  }
}

TEST_CASE("what stands behind \"of\" names the scale") {
  CHECK(scale_up_to(3) == MobilityScale::zero_to_three);
  CHECK(scale_up_to(5) == MobilityScale::one_to_five);
  CHECK_FALSE(scale_up_to(4).has_value());
  CHECK_FALSE(scale_up_to(0).has_value());
}

TEST_CASE("a score without its scale is not said") {
  MobilitySaid said;
  CHECK_FALSE(said.said());
  said.score = 2;
  CHECK_FALSE(said.said());
  said.scale = MobilityScale::zero_to_three;
  CHECK(said.said());
}
