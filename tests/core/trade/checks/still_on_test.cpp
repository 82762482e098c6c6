#include <doctest/doctest.h>

#include "tests/core/trade/told_turns.hpp"

using namespace evenclaw;
using namespace evenclaw::told;

namespace {

Past with_act(const Action& action, int days_ago = 12) {
  return Past().then(cow({foot(Foot::lh, {}, {action})}), first_of_november - days_ago);
}

Past wrapped(int days_ago = 12) {
  return with_act(act(ActionKind::wrap_on), days_ago);
}

const Names asked_still_on = {"ask still-on-not-mentioned LH"};

}  // namespace

TEST_CASE("a wrap from last time that nobody mentioned is asked about when she is let out") {
  CHECK(fired(cow({fine(Foot::lh)}), wrapped().known, first_of_november) == asked_still_on);
  CHECK(fired(cow({fine(Foot::lh)}), wrapped().known, first_of_november, false).empty());
}

TEST_CASE("it is asked about also when the foot was not lifted") {
  CHECK(fired(cow({fine(Foot::rh)}), wrapped().known, first_of_november) == asked_still_on);
}

TEST_CASE("words and answers are ready to tap") {
  const std::vector<Warning> warnings =
      check_turn(cow({fine(Foot::lh)}), wrapped().known, first_of_november, true, english());
  REQUIRE(warnings.size() == 1);
  CHECK(warnings[0].words == "Wrap on left hind since 20 Oct (12 d): still on?");
  CHECK(warnings[0].answers == Names{"LH wrap still on", "LH wrap came off by itself",
                                     "LH wrap taken off", "LH wrap don't know"});
}

TEST_CASE("a block told on her of no foot is asked about, until it is said where it is") {
  Past past;
  TaskRow somewhere;
  somewhere.kind = TaskKind::block_off;
  somewhere.made_on = first_of_november - 12;
  past.known.rows.tasks = {somewhere};
  const std::vector<Warning> warnings =
      check_turn(cow({fine(Foot::lh)}), past.known, first_of_november, true, english());
  REQUIRE(warnings.size() == 1);
  CHECK(warnings[0].words == "Block told on her 20 Oct, of no foot: on which is it?");
  CHECK(warnings[0].answers == Names{"LH block still on", "RH block still on", "LF block still on",
                                     "RF block still on", "go ahead"});
  const Turn told = cow({foot(Foot::rh, {}, {act(ActionKind::block_still_on)})});
  CHECK(fired(told, past.known, first_of_november).empty());
}

TEST_CASE("a wrap of which nobody knew is asked about at the next visit as it was seen") {
  const Past past = with_act(act(ActionKind::wrap_still_on));
  const std::vector<Warning> warnings =
      check_turn(cow({fine(Foot::lh)}), past.known, first_of_november, true, english());
  REQUIRE(warnings.size() == 1);
  CHECK(warnings[0].words == "Wrap on left hind seen 20 Oct (12 d): still on?");
}

TEST_CASE("whatever was said of the wrap settles it") {
  for (const ActionKind kind :
       {ActionKind::wrap_still_on, ActionKind::wrap_off, ActionKind::wrap_came_off,
        ActionKind::wrap_unknown, ActionKind::wrap_on}) {
    CAPTURE(word_of(kind));
    CHECK(
        fired(cow({foot(Foot::lh, {}, {act(kind)})}), wrapped().known, first_of_november).empty());
  }
}

TEST_CASE("a word about the block does not settle the wrap") {
  const Turn turn = cow({foot(Foot::lh, {}, {act(ActionKind::block_on, Claw::inside)})});
  CHECK(fired(turn, wrapped().known, first_of_november) == asked_still_on);
}

TEST_CASE("a wrap that is known to be off is not asked about") {
  Past past = wrapped();
  past.then(cow({foot(Foot::lh, {}, {act(ActionKind::wrap_off)})}), first_of_november - 5);
  CHECK(fired(cow({fine(Foot::lh)}), past.known, first_of_november).empty());
}

TEST_CASE("don't know is asked again at the next visit") {
  Past past = wrapped(30);
  past.then(cow({foot(Foot::lh, {}, {act(ActionKind::wrap_unknown)})}), first_of_november - 12);
  CHECK(fired(cow({fine(Foot::lh)}), past.known, first_of_november) == asked_still_on);
}

TEST_CASE("a cow that was not done is not asked about, an unfinished one gently") {
  Turn turn = cow({});
  turn.end = TurnEnd::not_done;
  CHECK(fired(turn, wrapped().known, first_of_november).empty());
  turn.end = TurnEnd::unfinished;
  const std::vector<Warning> warnings =
      check_turn(turn, wrapped().known, first_of_november, true, english());
  REQUIRE(warnings.size() == 1);
  CHECK(warnings[0].words == "Not finished; was the wrap on left hind since 20 Oct (12 d) seen?");
}

TEST_CASE("a wrap put on earlier in the same visit is not asked about") {
  Past past = wrapped(0);
  past.in_same_visit();
  CHECK(fired(cow({fine(Foot::rh)}), past.known, first_of_november).empty());
}

TEST_CASE("a wrap put on in an earlier visit of the same day is") {
  CHECK(fired(cow({fine(Foot::lh)}), wrapped(0).known, first_of_november) == asked_still_on);
}

TEST_CASE("answered in her first turn of the visit, it is not asked in the second") {
  Past past = wrapped();
  past.then(cow({foot(Foot::lh, {}, {act(ActionKind::wrap_still_on)})}), first_of_november)
      .in_same_visit();
  CHECK(fired(cow({fine(Foot::rh)}), past.known, first_of_november).empty());
}

TEST_CASE("a wrap and a block on one foot are two questions") {
  Past past = wrapped();
  past.then(cow({foot(Foot::lh, {}, {act(ActionKind::block_on, Claw::inside)})}),
            first_of_november - 10);
  CHECK(fired(cow({fine(Foot::lh)}), past.known, first_of_november) ==
        Names{"ask still-on-not-mentioned LH", "ask still-on-not-mentioned LH"});
}

TEST_CASE("with a block on each claw the answers name the claw") {
  Past past = with_act(act(ActionKind::block_on, Claw::inside));
  past.then(cow({foot(Foot::lh, {}, {act(ActionKind::block_on, Claw::outside)})}),
            first_of_november - 10);
  const std::vector<Warning> warnings =
      check_turn(cow({fine(Foot::lh)}), past.known, first_of_november, true, english());
  REQUIRE(warnings.size() == 2);
  CHECK(warnings[0].answers[0] == "LH block still on inside");
  CHECK(warnings[1].answers[0] == "LH block still on outside");
}
