#include "core/api/farm/scoring_words.hpp"

#include <doctest/doctest.h>

namespace evenclaw {

TEST_CASE("a scoring tells how many of how many, at each score of its scale") {
  MobilityScoringRow row;
  row.scale = MobilityScale::one_to_five;
  row.animals = "dry cows";
  row.scored = 11;
  row.at_1 = 9;
  row.at_4 = 2;
  CHECK(scoring_words(row) ==
        "dry cows, scale 1 to 5, 11 scored, how many were present was not said: 9 at 1, 0 at 2, 0 "
        "at 3, 2 at 4, 0 at 5");
  row.present = 14;
  row.not_scored = 1;
  row.in_doubt = 1;
  row.shortly_after_trim = 3;
  CHECK(scoring_words(row) ==
        "dry cows, scale 1 to 5, 11 of 14 present scored: 9 at 1, 0 at 2, 0 at 3, 2 at 4, 0 at 5; "
        "1 there and not scored; 1 scored twice in two ways; 3 of the scored within a week after "
        "a trim");
}

}  // namespace evenclaw
