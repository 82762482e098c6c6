#include "core/api/farm/farm_shown.hpp"

#include <doctest/doctest.h>

#include "core/api/farm/change_desk.hpp"
#include "core/api/farm/scoring_desk.hpp"
#include "tests/core/api/workplace.hpp"

namespace evenclaw::test {

TEST_CASE("what is on record of the farm is given the newest first") {
  Workplace work;
  const Herd herd = work.herd();
  for (const char* on : {"2026-10-01", "2026-10-20", "2026-10-10"}) {
    auto scoring = ScoringDesk::open(work.ports(), {herd, day(on), {}}, english()).value();
    (void)scoring.say_all(std::vector<std::string>{"scale 0 to 3", "40 at 0"}).value();
    auto change = ChangeDesk::open(work.ports(), {herd, day(on), {}}, english()).value();
    (void)change.say_all(std::vector<std::string>{std::string("floor: of ") + on}).value();
  }
  const auto scorings = scorings_of(work.store, herd.herd).value();
  REQUIRE(scorings.size() == 3);
  CHECK(scorings[0].day == day("2026-10-20"));
  CHECK(scorings[2].day == day("2026-10-01"));
  const auto changes = changes_of(work.store, herd.herd).value();
  REQUIRE(changes.size() == 3);
  CHECK(changes[0].day == day("2026-10-20"));
}

}  // namespace evenclaw::test
