#include "demo/recorder.hpp"

#include <doctest/doctest.h>

#include "core/trade/rows.hpp"
#include "tests/demo/small_business.hpp"

namespace evenclaw::demo {

TEST_CASE("every line of a story is understood, and every cow called is a turn of the records") {
  const BusinessWanted wanted = half_a_year();
  const HerdStory story = tell_story(wanted, small_farm_index);
  RecordedFarm farm(wanted);
  const auto recorded = record_farm(farm.ports(), farm.clock, story);
  REQUIRE(recorded.ok());
  std::size_t called = 0;
  for (const CalledVisit& visit : story.visits) called += visit.turns.size();
  CHECK(recorded->refused == 0);
  CHECK(recorded->visits == static_cast<std::int32_t>(story.visits.size()));
  const auto turns = select_as<TurnRow>(farm.store, recorded->herd);
  REQUIRE(turns.ok());
  CHECK(turns->size() == called);
}

TEST_CASE("the findings of the records are those that were called") {
  const BusinessWanted wanted = half_a_year();
  const HerdStory story = tell_story(wanted, small_farm_index);
  RecordedFarm farm(wanted);
  const auto recorded = record_farm(farm.ports(), farm.clock, story);
  REQUIRE(recorded.ok());
  std::size_t called = 0;
  for (const Look& look : story.looks) called += look.was_called ? 1 : 0;
  const auto findings = select_as<FindingRow>(farm.store, recorded->herd);
  REQUIRE(findings.ok());
  CHECK(findings->size() == called);
}

TEST_CASE("a herd that is there already is not recorded once more") {
  const BusinessWanted wanted = half_a_year();
  const HerdStory story = tell_story(wanted, small_farm_index);
  RecordedFarm farm(wanted);
  REQUIRE(record_farm(farm.ports(), farm.clock, story).ok());
  const auto again = record_farm(farm.ports(), farm.clock, story);
  REQUIRE(!again.ok());
  CHECK(again.faults().front().slug == "usage");
}

}  // namespace evenclaw::demo
