#include "core/trade/call_line/said_again.hpp"

#include <doctest/doctest.h>

using namespace evenclaw;

namespace {

Finding found(Lesion lesion, Claw claw = Claw::not_called, Degree degree = Degree::not_called) {
  Finding finding;
  finding.lesion = lesion;
  finding.claw = claw;
  finding.degree = degree;
  return finding;
}

Action act(ActionKind kind, Claw claw = Claw::none) {
  Action action;
  action.kind = kind;
  action.claw = claw;
  return action;
}

}  // namespace

TEST_CASE("a finding said twice is one where nothing that was called differs") {
  const Finding plain = found(Lesion::su);
  CHECK(are_one(plain, found(Lesion::su, Claw::outside, Degree::bad)));
  CHECK_FALSE(are_one(found(Lesion::su, Claw::inside), found(Lesion::su, Claw::outside)));
  CHECK_FALSE(are_one(plain, found(Lesion::sh)));
}

TEST_CASE("said again with more detail the first is completed, and what was called stays") {
  Finding kept = found(Lesion::su, Claw::outside);
  Finding more = found(Lesion::su, Claw::inside, Degree::bad);
  more.dd_infected = true;
  complete(kept, more);
  CHECK(kept.claw == Claw::outside);
  CHECK(kept.degree == Degree::bad);
  CHECK(kept.dd_infected);
}

TEST_CASE("an act said again gets its time and product, a second product is another act") {
  Action kept = act(ActionKind::spray);
  Action more = act(ActionKind::spray);
  more.product = "bluemix";
  more.when.days = 3;
  REQUIRE(are_one(kept, more));
  complete(kept, more);
  CHECK(kept.product == "bluemix");
  CHECK(kept.when.days == 3);
  Action other = act(ActionKind::spray);
  other.product = "redmix";
  CHECK_FALSE(are_one(kept, other));
}

TEST_CASE("an act said again with another time is one, and the later time holds") {
  Action kept = act(ActionKind::wrap_on);
  kept.when.days = 3;
  Action later = act(ActionKind::wrap_on);
  later.when.weekday = Weekday::friday;
  REQUIRE(are_one(kept, later));
  complete(kept, later);
  CHECK(kept.when == later.when);
}

TEST_CASE("milk or meat is never held back for less than was said before") {
  Action shorter = act(ActionKind::milk_withheld);
  shorter.when.days = 2;
  Action longer = act(ActionKind::milk_withheld);
  longer.when.days = 4;
  CHECK(are_one(shorter, longer));
  CHECK_FALSE(are_one(longer, shorter));
}

TEST_CASE("a wrap of another day is not taken back") {
  Action said = act(ActionKind::wrap_on);
  said.when.days = 3;
  Action done = act(ActionKind::wrap_on);
  done.when.days = 5;
  CHECK_FALSE(takes_back(said, done));
}

TEST_CASE("a general lesion taken back means the kind of it that was called") {
  CHECK(takes_back(found(Lesion::wl), found(Lesion::wla)));
  CHECK_FALSE(takes_back(found(Lesion::wla), found(Lesion::wl)));
}

TEST_CASE("a block taken back is whatever way it was put on, and never one that came off") {
  const Action any = act(ActionKind::block_on, Claw::not_called);
  CHECK(takes_back(any, act(ActionKind::block_again, Claw::inside)));
  CHECK_FALSE(takes_back(any, act(ActionKind::block_off, Claw::inside)));
  CHECK_FALSE(takes_back(any, act(ActionKind::wrap_on)));
}

TEST_CASE("a length taken back is any measure of that length, a measure however long it was") {
  const Measure toe{MeasureKind::toe_length, Claw::outside, Length{480}};
  CHECK(takes_back(MeasureTakenBack{std::nullopt, Claw::not_called, Length{480}}, toe));
  CHECK(takes_back(MeasureTakenBack{MeasureKind::toe_length, Claw::not_called, {}}, toe));
  CHECK_FALSE(takes_back(MeasureTakenBack{MeasureKind::heel_height, Claw::not_called, {}}, toe));
  CHECK_FALSE(takes_back(MeasureTakenBack{std::nullopt, Claw::inside, Length{480}}, toe));
}

TEST_CASE("nothing after all takes back every finding and nothing that was done") {
  CHECK(is_taken_back_by(NothingAfterAll{}, FindingSaid{found(Lesion::su)}));
  CHECK_FALSE(is_taken_back_by(NothingAfterAll{}, ActionSaid{act(ActionKind::spray)}));
}
