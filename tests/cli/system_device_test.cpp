#include "cli/system_device.hpp"

#include <doctest/doctest.h>

#include <set>

namespace evenclaw::cli {

namespace {

/// Stands still until it is set.
class StandingClock final : public Clock {
 public:
  Instant now() override { return {ms, 60}; }

  std::int64_t ms = 1'790'000'000'000;
};

}  // namespace

TEST_CASE("More ids than a millisecond can count are still each greater than the one before") {
  StandingClock clock;
  SystemFreshIds ids(clock);
  Uuid last = ids.next();
  for (int i = 0; i < 10'000; ++i) {
    const Uuid next = ids.next();
    REQUIRE(last < next);
    last = next;
  }
}

TEST_CASE("Ids stay greater when the clock goes back a day, and when it goes on again") {
  StandingClock clock;
  SystemFreshIds ids(clock);
  Uuid last = ids.next();
  for (const std::int64_t step : {-86'400'000, 1, 86'400'000, 1}) {
    clock.ms += step;
    const Uuid next = ids.next();
    CHECK(last < next);
    last = next;
  }
}

TEST_CASE("Two devices whose clocks show the same name no entry alike") {
  StandingClock clock;
  SystemFreshIds here(clock);
  SystemFreshIds there(clock);
  std::set<Uuid> seen;
  for (int i = 0; i < 1000; ++i) {
    CHECK(seen.insert(here.next()).second);
    CHECK(seen.insert(there.next()).second);
  }
}

TEST_CASE("The offset from UTC is told in minutes, as far as clocks on earth differ") {
  const Instant now = SystemClock().now();
  CHECK(now.offset_min >= -12 * 60);
  CHECK(now.offset_min <= 14 * 60);
  CHECK(now.ms > 1'700'000'000'000);
}

}  // namespace evenclaw::cli
