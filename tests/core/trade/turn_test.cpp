#include "core/trade/turn.hpp"

#include <doctest/doctest.h>

using namespace evenclaw;

namespace {

const Day wednesday = *day_of(CivilDate{2026, 11, 25});

FootCall call_of(Foot foot) {
  FootCall call;
  call.foot = foot;
  return call;
}

}  // namespace

TEST_CASE("a number of days is counted from the visit") {
  TimeSaid said;
  said.days = 28;
  CHECK(day_meant(said, wednesday) == wednesday + 28);
}

TEST_CASE("a weekday means the next such day, never the day of the visit") {
  TimeSaid said;
  said.weekday = Weekday::thursday;
  CHECK(day_meant(said, wednesday) == wednesday + 1);
  said.weekday = Weekday::wednesday;
  CHECK(day_meant(said, wednesday) == wednesday + 7);
}

TEST_CASE("no time said is no day") {
  CHECK_FALSE(TimeSaid{}.said());
  CHECK_FALSE(day_meant(TimeSaid{}, wednesday).has_value());
}

TEST_CASE("a foot is found in the turn whether it may be changed or not") {
  Turn turn;
  turn.feet.push_back(call_of(Foot::lh));
  REQUIRE(find_foot(turn, Foot::lh) != nullptr);
  find_foot(turn, Foot::lh)->note = "swollen";
  const Turn& fixed = turn;
  CHECK(find_foot(fixed, Foot::lh)->note == "swollen");
  CHECK(find_foot(fixed, Foot::rh) == nullptr);
}

TEST_CASE("rest fine fills today's feet nobody spoke of, and never more") {
  Turn turn;
  turn.rest_fine = true;
  turn.feet.push_back(call_of(Foot::lh));
  turn.feet.back().findings.emplace_back();
  const Turn after = settled(turn, hind_feet);
  REQUIRE(after.feet.size() == 2);
  CHECK(find_foot(after, Foot::rh)->state == FootState::nothing_found);
  CHECK(find_foot(after, Foot::lf) == nullptr);
  CHECK(after.rest_fine);
}

TEST_CASE("a foot that was named for an act only is not filled by rest fine") {
  Turn turn;
  turn.rest_fine = true;
  turn.feet.push_back(call_of(Foot::lh));
  turn.feet.back().actions.emplace_back();
  CHECK(find_foot(settled(turn, hind_feet), Foot::lh)->state == FootState::unsaid);
}

TEST_CASE("rest fine means a foot too that was only trimmed, when it is one of today's") {
  Turn turn;
  turn.rest_fine = true;
  for (const Foot foot : all_feet) turn.feet.push_back(call_of(foot));
  find_foot(turn, Foot::rh)->trimmed = Trimmed::yes;
  find_foot(turn, Foot::lf)->trimmed = Trimmed::yes;
  const Turn after = settled(turn, hind_feet);
  CHECK(find_foot(after, Foot::lh)->state == FootState::unsaid);  // only named
  CHECK(find_foot(after, Foot::rh)->state == FootState::nothing_found);
  CHECK(find_foot(after, Foot::rh)->trimmed == Trimmed::yes);
  CHECK(find_foot(after, Foot::lf)->state == FootState::unsaid);
}

TEST_CASE("silence is never nothing found") {
  CHECK(settled(Turn{}, four_feet).feet.empty());
}

TEST_CASE("a foot with a finding is in state finding once the turn is settled") {
  Turn turn;
  turn.feet.push_back(call_of(Foot::rf));
  turn.feet.back().findings.emplace_back();
  CHECK(find_foot(settled(turn, {}), Foot::rf)->state == FootState::finding);
}

TEST_CASE("rest fine means a trimmed foot too that was measured, not one that was only measured") {
  Turn turn;
  turn.rest_fine = true;
  for (const Foot foot : {Foot::lh, Foot::rh}) {
    turn.feet.push_back(call_of(foot));
    turn.feet.back().measures.push_back({MeasureKind::toe_length, Claw::outside, Length{780}});
  }
  find_foot(turn, Foot::lh)->trimmed = Trimmed::yes;
  const Turn after = settled(turn, hind_feet);
  CHECK(find_foot(after, Foot::lh)->state == FootState::nothing_found);
  CHECK(find_foot(after, Foot::lh)->measures.size() == 1);
  CHECK(find_foot(after, Foot::rh)->state == FootState::unsaid);
}
