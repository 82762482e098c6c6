#include "core/trade/mobility_scoring.hpp"

#include <doctest/doctest.h>

namespace evenclaw {

TEST_CASE("two who score the same animals on the same day and scale mean one scoring") {
  const HerdId herd{uuid_derived("home")};
  const Day day{20'780};
  const VisitId scoring = scoring_id(herd, day, MobilityScale::zero_to_three, "High yielders");
  CHECK(scoring == scoring_id(herd, day, MobilityScale::zero_to_three, " high yielders"));
  CHECK(scoring != scoring_id(herd, day, MobilityScale::one_to_five, "High yielders"));
  CHECK(scoring != scoring_id(herd, day, MobilityScale::zero_to_three, ""));
  CHECK(scoring != scoring_id(herd, day + 1, MobilityScale::zero_to_three, "High yielders"));
}

}  // namespace evenclaw
