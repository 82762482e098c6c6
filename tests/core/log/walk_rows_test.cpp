#include "core/log/walk_rows.hpp"

#include <doctest/doctest.h>

#include "core/log/picture.hpp"
#include "tests/core/log/farm.hpp"

namespace evenclaw {

namespace {

WalkMeasured measured(WalkMeasure measure, std::optional<std::int32_t> value) {
  WalkMeasured one;
  one.measure = measure;
  one.value = value;
  one.not_looked_at = !value.has_value();
  return one;
}

class WalkedFarm {
 public:
  void say(std::vector<WalkMeasured> all) {
    FarmWalk body;
    body.day = day("2026-11-24");
    body.walk = walk();
    body.measured = std::move(all);
    farm.write(body);
  }

  [[nodiscard]] VisitId walk() const { return walk_id(farm.herd(), day("2026-11-24"), ""); }

  [[nodiscard]] std::vector<FarmWalkRow> rows() const { return farm.rows_of(walk()).farm_walks; }

  Farm farm;
};

}  // namespace

TEST_CASE("a walk has one row for each measure, with the unit of its value") {
  WalkedFarm home;
  home.say({measured(WalkMeasure::cows, 132)});
  home.say({measured(WalkMeasure::cubicle_width, 1150)});
  const auto rows = home.rows();
  REQUIRE(rows.size() == 2);
  CHECK(rows[0].unit == WalkUnit::count);
  CHECK(rows[1].unit == WalkUnit::mm);
  CHECK(rows[1].value == 1150);
}

TEST_CASE("that nobody looked gives way to what somebody saw, and never takes its place") {
  WalkedFarm home;
  home.say({measured(WalkMeasure::cows, std::nullopt)});
  CHECK(home.rows().at(0).not_looked_at);
  home.say({measured(WalkMeasure::cows, 132), measured(WalkMeasure::cows, std::nullopt)});
  REQUIRE(home.rows().size() == 1);
  CHECK(home.rows()[0].value == 132);
}

TEST_CASE("a measure said in two ways stays twice until one is said to hold") {
  WalkedFarm home;
  home.say({measured(WalkMeasure::cows, 132)});
  home.say({measured(WalkMeasure::cows, 130)});
  REQUIRE(home.rows().size() == 2);
  CHECK(home.rows()[0].twice);
  WalkMeasured right = measured(WalkMeasure::cows, 130);
  right.mends = true;
  home.say({right});
  REQUIRE(home.rows().size() == 1);
  CHECK_FALSE(home.rows()[0].twice);
  right.scrapped = true;
  home.say({right});
  CHECK(home.rows().empty());
}

TEST_CASE("a walk touches its own picture and no cow") {
  WalkedFarm home;
  home.say({measured(WalkMeasure::cows, 132)});
  CHECK(touched_by(home.farm.last()).cows.empty());
  CHECK(touched_by(home.farm.last()).visits == std::vector<VisitId>{home.walk()});
}

}  // namespace evenclaw
