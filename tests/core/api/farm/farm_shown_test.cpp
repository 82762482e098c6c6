#include "core/api/farm/farm_shown.hpp"

#include <doctest/doctest.h>

#include "core/api/farm/change_desk.hpp"
#include "core/api/farm/scoring_desk.hpp"
#include "core/api/transfer.hpp"
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

TEST_CASE("rows made anew are the same, and a scoring or a change counts as no visit") {
  Workplace work;
  work.visited("2026-10-20", {"412", "nothing found"});
  const Herd herd = work.herd();
  auto scoring = ScoringDesk::open(work.ports(), {herd, day("2026-10-27"), {}}, english()).value();
  (void)scoring.say_all(std::vector<std::string>{"scale 0 to 3", "412 1", "40 at 0"}).value();
  auto change = ChangeDesk::open(work.ports(), {herd, day("2026-10-27"), {}}, english()).value();
  (void)change.say_all(std::vector<std::string>{"floor: rubber; planned"}).value();
  const Rebuilt rebuilt = rebuild_picture(work.store, {}).value();
  CHECK(rebuilt.visits == 1);
  CHECK(rebuilt.cows == 1);
  const auto scorings = scorings_of(work.store, herd.herd).value();
  REQUIRE(scorings.size() == 1);
  CHECK(scorings[0].scored == 41);
  CHECK(changes_of(work.store, herd.herd).value().size() == 1);
}

}  // namespace evenclaw::test
