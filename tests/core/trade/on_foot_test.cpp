#include "core/trade/on_foot.hpp"

#include <doctest/doctest.h>

#include "tests/core/trade/told_turns.hpp"

using namespace evenclaw;
using namespace evenclaw::told;

namespace {

Rows blocked_on(Claw claw) {
  return Past()
      .then(cow({foot(Foot::lh, {}, {act(ActionKind::block_on, claw)})}), first_of_november - 20)
      .known.rows;
}

ClawPair after(const Rows& past, std::vector<Action> actions) {
  return blocked_after(past, foot(Foot::lh, {}, std::move(actions)));
}

}  // namespace

TEST_CASE("every act on a block or wrap says so, no other act does") {
  int fixture_acts = 0;
  for (const auto& row : EnumWords<ActionKind>::table) {
    const std::optional<FixtureSaid> said = fixture_said(row.value);
    const bool by_name = row.word.substr(0, 6) == "block_" || row.word.substr(0, 5) == "wrap_";
    CHECK(said.has_value() == by_name);
    if (!said) continue;
    ++fixture_acts;
    CHECK((said->fixture == Fixture::wrap) == (row.word.substr(0, 5) == "wrap_"));
    CHECK_FALSE((is_on_after(said->step) && is_off_after(said->step)));
  }
  CHECK(fixture_acts == 13);
}

TEST_CASE("a pair of claws names what is in it") {
  ClawPair claws;
  CHECK(claws.none());
  CHECK(claws.claw() == Claw::not_called);
  claws.add(Claw::inside);
  CHECK(claws.claw() == Claw::inside);
  CHECK_FALSE(claws.has(Claw::both));
  claws.add(Claw::outside);
  CHECK(claws.has(Claw::both));
  CHECK(claws.claw() == Claw::both);
  claws.remove(Claw::inside);
  CHECK(claws.claw() == Claw::outside);
  claws.add(Claw::not_called);
  CHECK(claws.claw() == Claw::outside);
}

TEST_CASE("a block taken off is no longer on") {
  CHECK(after(blocked_on(Claw::inside), {act(ActionKind::block_off)}).none());
  CHECK(after(blocked_on(Claw::inside), {act(ActionKind::block_came_off, Claw::inside)}).none());
}

TEST_CASE("a block taken off the other claw leaves this one on") {
  CHECK(after(blocked_on(Claw::inside), {act(ActionKind::block_off, Claw::outside)}).claw() ==
        Claw::inside);
}

TEST_CASE("new block on, old one taken off: the order in which it is said does not matter") {
  const Action on = act(ActionKind::block_on, Claw::outside);
  const Action off = act(ActionKind::block_off, Claw::inside);
  CHECK(after(blocked_on(Claw::inside), {on, off}).claw() == Claw::outside);
  CHECK(after(blocked_on(Claw::inside), {off, on}).claw() == Claw::outside);
}

TEST_CASE("a refitted block without a side goes where the only block was") {
  const FootCall call = foot(Foot::lh, {}, {act(ActionKind::block_refitted)});
  CHECK(claw_meant(blocked_on(Claw::inside), call, call.actions[0]) == Claw::inside);
  CHECK(claw_meant({}, call, call.actions[0]) == Claw::not_called);
}

TEST_CASE("the side of a new block is never taken from an old one") {
  const FootCall call = foot(Foot::lh, {}, {act(ActionKind::block_on)});
  CHECK(claw_meant(blocked_on(Claw::inside), call, call.actions[0]) == Claw::not_called);
}

TEST_CASE("a block nobody knew about may still be on, but is no ground for an alarm") {
  Past past;
  past.then(cow({foot(Foot::lh, {}, {act(ActionKind::block_on, Claw::inside)})}),
            first_of_november - 20);
  past.then(cow({foot(Foot::lh, {}, {act(ActionKind::block_unknown)})}), first_of_november - 10);
  CHECK(fixtures_left(past.known.rows, Foot::lh, Fixture::block).size() == 1);
  CHECK(blocked_before(past.known.rows, Foot::lh).none());
}
