#include "core/api/farm/walk_words.hpp"

#include <doctest/doctest.h>

namespace evenclaw {

TEST_CASE("a measure is told with its value, on how many, or that nobody looked") {
  WalkMeasured width;
  width.measure = WalkMeasure::cubicle_width;
  width.value = 1150;
  width.looked_at = 10;
  CHECK(measured_words(width) == "cubicle width 1.15 m, 10 looked at");
  WalkMeasured grip;
  grip.measure = WalkMeasure::grip;
  grip.words = "slippery";
  grip.fitting = 3;
  grip.looked_at = 10;
  CHECK(measured_words(grip) == "grip slippery on 3 of 10");
  WalkMeasured nobody;
  nobody.measure = WalkMeasure::grip;
  nobody.not_looked_at = true;
  CHECK(measured_words(nobody) == "grip: not looked at");
}

TEST_CASE("what has no source says so") {
  CHECK(compared_words(WalkMeasure::cubicle_width) ==
        "compare: the size of the cows (common practice, no source)");
}

}  // namespace evenclaw
