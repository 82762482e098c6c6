#include "core/paper/axis_words.hpp"

#include <doctest/doctest.h>

#include <string>

namespace evenclaw {
namespace {

constexpr double letters = 3;

std::string shown(const AxisWordsSet& set) {
  std::string words;
  for (const Tick& tick : set.shown) words += (words.empty() ? "" : " ") + tick.text;
  return words;
}

const std::vector<Tick> numbers = {{0, "0"},    {1, "1000"}, {2, "2000"}, {3, "3000"},
                                   {4, "4000"}, {5, "5000"}, {6, "6000"}};
const std::vector<Tick> herds = {{1, "Hollow Meadow"}, {2, "Upper Yard"}, {3, "Mill Farm"}};

}  // namespace

TEST_CASE("Words that have room stand beside each other") {
  const AxisWordsSet set = set_below(herds, true, {0.5, 3.5}, 120, letters);
  CHECK(shown(set) == "Hollow Meadow Upper Yard Mill Farm");
  CHECK_FALSE(set.are_turned);
  CHECK(set.room == letters);
}

TEST_CASE("Names that would lie over each other are turned, and none is left out") {
  const AxisWordsSet set = set_below(herds, true, {0.5, 3.5}, 40, letters);
  CHECK(shown(set) == "Hollow Meadow Upper Yard Mill Farm");
  CHECK(set.are_turned);
  CHECK(set.room > 5 * letters);
}

TEST_CASE("Numbers that would lie over each other are thinned from the first one on") {
  CHECK(shown(set_below(numbers, false, {0, 6}, 120, letters)) ==
        "0 1000 2000 3000 4000 5000 6000");
  CHECK(shown(set_below(numbers, false, {0, 6}, 36, letters)) == "0 2000 4000 6000");
  const AxisWordsSet least = set_below(numbers, false, {0, 6}, 2, letters);
  CHECK(shown(least) == "0");
  CHECK_FALSE(least.are_turned);
}

}  // namespace evenclaw
