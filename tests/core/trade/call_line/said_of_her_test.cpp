#include "core/trade/call_line/said_of_her.hpp"

#include <doctest/doctest.h>

#include "tests/core/trade/told_turns.hpp"

using namespace evenclaw;
using namespace evenclaw::told;

TEST_CASE("a withdrawal told again after another medicine is that one's") {
  std::vector<Action> of_her = {act(ActionKind::no_withdrawal)};
  CHECK(count_of_same_of_her(of_her, act(ActionKind::no_withdrawal)) == 1);
  add_or_complete_of_her(of_her, act(ActionKind::no_withdrawal));
  CHECK(of_her.size() == 1);
  add_or_complete_of_her(of_her, act(ActionKind::injected));
  CHECK(count_of_same_of_her(of_her, act(ActionKind::no_withdrawal)) == 0);
  add_or_complete_of_her(of_her, act(ActionKind::no_withdrawal));
  REQUIRE(of_her.size() == 3);
  CHECK(of_her.back().kind == ActionKind::no_withdrawal);
}

TEST_CASE("any other act said again is one act, whatever came between") {
  std::vector<Action> of_her = {act(ActionKind::to_straw), act(ActionKind::injected)};
  add_or_complete_of_her(of_her, act(ActionKind::to_straw));
  CHECK(of_her.size() == 2);
}
