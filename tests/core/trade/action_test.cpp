#include "core/trade/action.hpp"

#include <doctest/doctest.h>

using namespace evenclaw;

TEST_CASE("a date that was said is that day, whenever the visit was") {
  TimeSaid said;
  said.date = Day{20800};
  CHECK(day_meant(said, Day{20758}) == Day{20800});
  CHECK(day_meant(said, Day{20900}) == Day{20800});
}

TEST_CASE("days nobody can have said make no day, as a log from elsewhere may hold them") {
  TimeSaid said;
  for (const std::int32_t days : {-1, 100'000, 2'000'000'000}) {
    CAPTURE(days);
    said.days = days;
    CHECK_FALSE(day_meant(said, Day{20758}));
  }
  said.days = 0;
  CHECK(day_meant(said, Day{20758}) == Day{20758});
}

TEST_CASE("a milking alone is no time") {
  TimeSaid said;
  said.milking = Milking::evening;
  CHECK_FALSE(said.said());
}
