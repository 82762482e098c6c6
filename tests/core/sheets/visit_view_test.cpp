#include "core/sheets/visit_view.hpp"

#include <doctest/doctest.h>

#include <algorithm>

#include "tests/core/sheets/invented_day.hpp"

namespace evenclaw {

TEST_CASE("rows of other visits and of cows not there are passed over") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.rest_fine();
  VisitSheetInput input = day.input();
  FindingRow other_visit;
  other_visit.cow = day.id_of("412");
  other_visit.visit = visit_id(input.visit.herd, input.visit.day - 30, 1);
  input.rows.findings.push_back(other_visit);
  FootRow other_cow;
  other_cow.cow = day.id_of("999");
  other_cow.visit = input.visit.visit;
  input.rows.feet.push_back(other_cow);
  const VisitView view = view_of(input, english_wording());
  REQUIRE(view.cows.size() == 1);
  CHECK(view.cows[0].findings.empty());
  CHECK(view.cows[0].feet.size() == 2);
}

TEST_CASE("a cow that came twice is one cow, and the most that was said of a foot counts") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.foot(Foot::lh, FootState::not_lifted);
  day.turn("412");
  day.found({Foot::lh, Claw::outside, Lesion::su});
  const VisitView view = view_of(day.input(), english_wording());
  REQUIRE(view.cows.size() == 1);
  CHECK(view.cows[0].turns.size() == 2);
  CHECK(state_of(view.cows[0], Foot::lh) == FootState::finding);
}

TEST_CASE("a foot nobody spoke of is unsaid, and only today's feet are asked about") {
  InventedDay day("Hollow Meadow", hind_feet);
  day.turn("412");
  day.foot(Foot::lh, FootState::nothing_found);
  const VisitView view = view_of(day.input(), english_wording());
  CHECK(unsaid_feet(view.cows.at(0), hind_feet) == FootSet{Foot::rh});
  CHECK(unsaid_feet(view.cows.at(0), four_feet) == FootSet{Foot::lf, Foot::rf, Foot::rh});
}

TEST_CASE("a foot that was named and not judged is told apart from one nobody spoke of") {
  InventedDay day("Hollow Meadow", hind_feet);
  day.turn("412");
  day.foot(Foot::lh, FootState::unsaid);
  day.rows().turns.back().lifted = {};
  const VisitView view = view_of(day.input(), english_wording());
  CHECK(feet_not_judged(view.cows.at(0)) == FootSet{Foot::lh});
  CHECK(unsaid_feet(view.cows.at(0), hind_feet) == FootSet{Foot::rh});
}

TEST_CASE("a wrap taken off on the day is no longer on, one taken off later still is") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  OnFootRow& off_today = day.put_on(Fixture::wrap, Foot::lh, Claw::none, 14);
  off_today.ended = FixtureEnd::taken_off;
  off_today.ended_on = day.input().visit.day;
  OnFootRow& off_later = day.put_on(Fixture::wrap, Foot::rh, Claw::none, 0);
  off_later.ended = FixtureEnd::taken_off;
  off_later.ended_on = day.input().visit.day + 5;
  const VisitView view = view_of(day.input(), english_wording());
  REQUIRE(view.cows.at(0).on_feet.size() == 1);
  CHECK(view.cows[0].on_feet[0]->foot == Foot::rh);
}

TEST_CASE("a cow named as not seen who came after all is not listed as missing") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.input().not_seen = {{day.id_of("412"), "412", "due"}, {day.id_of("88"), "88", "due"}};
  const VisitView view = view_of(day.input(), english_wording());
  REQUIRE(view.not_seen.size() == 1);
  CHECK(view.not_seen[0]->number == "88");
}

TEST_CASE("the order of the rows does not matter") {
  VisitSheetInput input = day_with_doubts();
  const auto numbers = [](const VisitSheetInput& from) {
    std::vector<std::string> labels;
    const VisitView view = view_of(from, english_wording());
    for (const CowSeen& cow : view.cows) labels.push_back(view.names.label(cow.cow));
    return labels;
  };
  const auto before = numbers(input);
  std::reverse(input.rows.turns.begin(), input.rows.turns.end());
  std::reverse(input.rows.cows.begin(), input.rows.cows.end());
  CHECK(numbers(input) == before);
  CHECK(before == std::vector<std::string>{"77", "513 or 531?", "620", "?"});
}

}  // namespace evenclaw
