#include "core/trade/farm_line/walk_amount.hpp"

#include <doctest/doctest.h>

namespace evenclaw {

TEST_CASE("a thing and a dimension name a measure, where that is measured") {
  CHECK(length_measure(FarmTopic::cubicle, FarmDimension::width) == WalkMeasure::cubicle_width);
  CHECK_FALSE(length_measure(FarmTopic::turn, FarmDimension::depth).has_value());
  CHECK_FALSE(length_measure(std::nullopt, FarmDimension::width).has_value());
}

TEST_CASE("everything of which nobody looked at anything is named") {
  CHECK(measures_of(FarmTopic::cubicle).size() == 2);
  CHECK(measures_of(FarmTopic::footbath).size() == 7);
}

TEST_CASE("a number is taken in a unit only where it comes out whole") {
  const Amount amount{3500, std::nullopt, 0};
  CHECK(amount.whole(1000) == 3500);
  CHECK(amount.whole(10) == 35);
  CHECK_FALSE(amount.whole(1).has_value());
  CHECK(amount.as_said() == "3.5");
}

TEST_CASE("only lengths are lengths") {
  CHECK(mm_in(FarmUnit::m) == 1000);
  CHECK_FALSE(mm_in(FarmUnit::kg).has_value());
}

}  // namespace evenclaw
