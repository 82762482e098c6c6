#include "core/sheets/withdrawal_said.hpp"

#include <doctest/doctest.h>

#include "tests/core/sheets/invented_day.hpp"

namespace evenclaw {

namespace {

std::vector<const ActionRow*> acts_of(InventedDay& day) {
  std::vector<const ActionRow*> acts;
  for (const ActionRow& row : day.rows().actions) acts.push_back(&row);
  return acts;
}

}  // namespace

TEST_CASE("each telling is of what was called just before it, and two in a row of the same") {
  InventedDay day("Hollow Meadow");
  day.turn("42");
  day.did({ActionKind::spray, Foot::lh, Claw::none, "x"});
  day.did({ActionKind::milk_withheld, std::nullopt, Claw::none, "", 2});
  day.did({ActionKind::meat_withheld, std::nullopt, Claw::none, "", 2});
  day.did({ActionKind::given, std::nullopt, Claw::none, "pen"});
  day.did({ActionKind::no_withdrawal});
  const auto acts = acts_of(day);
  const auto said = withdrawals_said(acts);
  REQUIRE(said.size() == 3);
  CHECK(said_of(said, *acts[0]).size() == 2);
  CHECK(said_of(said, *acts[3]) == std::vector<const ActionRow*>{acts[4]});
  const MilkAndMeat of_spray = milk_and_meat_of(said_of(said, *acts[0]));
  CHECK(of_spray.milk);
  CHECK(of_spray.meat);
  CHECK_FALSE(is_withdrawal_open(acts, said, *acts[3]));
}

TEST_CASE("told with nothing given before it, it is of nothing") {
  InventedDay day("Hollow Meadow");
  day.turn("42");
  day.did({ActionKind::no_withdrawal});
  day.did({ActionKind::given, std::nullopt, Claw::none, "pen"});
  const auto acts = acts_of(day);
  const auto said = withdrawals_said(acts);
  REQUIRE(said.size() == 1);
  CHECK(said[0].may_be_of.empty());
  CHECK(is_withdrawal_open(acts, said, *acts[1]));
}

TEST_CASE("the vet's plan is not what was given by it") {
  InventedDay day("Hollow Meadow");
  day.turn("42");
  day.did({ActionKind::vet_plan, Foot::lh});
  day.did({ActionKind::injected, std::nullopt, Claw::none, "x"});
  day.did({ActionKind::no_withdrawal});
  const auto acts = acts_of(day);
  const auto said = withdrawals_said(acts);
  CHECK(said_of(said, *acts[1]).size() == 1);
  CHECK_FALSE(is_withdrawal_open(acts, said, *acts[0]));
}

}  // namespace evenclaw
