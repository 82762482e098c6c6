#include "core/trade/farm_walk.hpp"

#include <doctest/doctest.h>

namespace evenclaw {

TEST_CASE("every measure names what it is compared with and its source, or that there is none") {
  REQUIRE(all_walk_measures().size() == std::size(EnumWords<WalkMeasure>::table));
  for (const auto& row : EnumWords<WalkMeasure>::table) {
    CAPTURE(row.word);
    const WalkMeasureFacts& facts = facts_of(row.value);
    CHECK(facts.measure == row.value);
    CHECK_FALSE(facts.name.empty());
    CHECK_FALSE(facts.compared_with.empty());
    CHECK_FALSE(facts.source.empty());
    CHECK(facts.least <= facts.most);
    CHECK((facts.unit == WalkUnit::said) == (facts.most == 0));
  }
}

TEST_CASE("a value is said in the unit people use for it") {
  CHECK(said_value(WalkUnit::mm, 1150) == "1.15 m");
  CHECK(said_value(WalkUnit::mm, 3000) == "3 m");
  CHECK(said_value(WalkUnit::mm, 105) == "10.5 cm");
  CHECK(said_value(WalkUnit::minutes, 45) == "45 min");
  CHECK(said_value(WalkUnit::minutes, 150) == "2 h 30 min");
  CHECK(said_value(WalkUnit::tenths_of_percent, 25) == "2.5 %");
  CHECK(said_value(WalkUnit::times_a_week, 1) == "once a week");
  CHECK(said_value(WalkUnit::times_a_week, 3) == "3 times a week");
  CHECK(said_value(WalkUnit::said, 0).empty());
}

TEST_CASE("a walk through one place on a day is one walk, whoever writes of it") {
  const HerdId herd{uuid_derived("home")};
  CHECK(walk_id(herd, Day{20'780}, "Old shed") == walk_id(herd, Day{20'780}, "old shed "));
  CHECK(walk_id(herd, Day{20'780}, "") != walk_id(herd, Day{20'780}, "old shed"));
}

}  // namespace evenclaw
