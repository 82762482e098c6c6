#include <doctest/doctest.h>

#include "tests/core/trade/told_turns.hpp"

using namespace evenclaw;
using namespace evenclaw::told;

namespace {

Turn ulcer_and(const Action& action) {
  return cow({foot(Foot::lh, {found(Lesion::su, Claw::outside)}, {action})});
}

Past blocked(Claw claw) {
  return Past().then(cow({foot(Foot::lh, {}, {act(ActionKind::block_on, claw)})}),
                     first_of_november - 30);
}

const Names on_painful = {"stop block-on-painful-claw LH"};
const Names on_both = {"stop both-claws-blocked LH"};
const Names no_side = {"ask block-side-not-called LH"};

}  // namespace

TEST_CASE("every way of putting a block on the painful claw is a stop") {
  for (const ActionKind kind : {ActionKind::block_on, ActionKind::block_stacked,
                                ActionKind::block_refitted, ActionKind::block_again}) {
    CAPTURE(word_of(kind));
    CHECK(fired(ulcer_and(act(kind, Claw::outside)), {}, first_of_november) == on_painful);
    CHECK(fired(ulcer_and(act(kind, Claw::inside)), {}, first_of_november).empty());
  }
}

TEST_CASE("the stop comes while she is still in the crush") {
  CHECK(fired(ulcer_and(act(ActionKind::block_on, Claw::outside)), {}, first_of_november, false) ==
        on_painful);
}

TEST_CASE("blood in the sole is a stop only when it is bad") {
  const auto with = [](Degree degree) {
    return cow({foot(Foot::lh, {found(Lesion::sh, Claw::outside, degree)},
                     {act(ActionKind::block_on, Claw::outside)})});
  };
  CHECK(fired(with(Degree::bad), {}, first_of_november) == on_painful);
  CHECK(fired(with(Degree::plain), {}, first_of_november).empty());
  CHECK(fired(with(Degree::slight), {}, first_of_november).empty());
}

TEST_CASE("how bad it is, is asked of blood in the sole under a block once all is called") {
  const auto with = [](Claw found_on, Claw blocked) {
    return cow(
        {foot(Foot::lh, {found(Lesion::sh, found_on)}, {act(ActionKind::block_on, blocked)})});
  };
  const Names how_bad = {"ask block-over-what-may-hurt LH"};
  CHECK(fired(with(Claw::inside, Claw::inside), {}, first_of_november) == how_bad);
  CHECK(fired(with(Claw::both, Claw::inside), {}, first_of_november) == how_bad);
  CHECK(fired(with(Claw::inside, Claw::outside), {}, first_of_november).empty());
  CHECK(fired(with(Claw::inside, Claw::inside), {}, first_of_november, false).empty());
  const Turn turn = with(Claw::inside, Claw::inside);
  const Warning asked = check_turn(turn, {}, first_of_november, true, english()).at(0);
  CHECK(asked.words == "Block on left hind inside, over the sole haemorrhage: how bad is that?");
  CHECK(asked.answers == Names{"LH inside bruise slight", "LH inside bruise bad", "go ahead"});
}

TEST_CASE("a block beside skin disease is no stop") {
  const Turn turn = cow({foot(Foot::lh, {found(Lesion::dd), found(Lesion::hhe, Claw::outside)},
                              {act(ActionKind::block_on, Claw::outside)})});
  CHECK(fired(turn, {}, first_of_november).empty());
}

TEST_CASE("a lesion on the other foot does not stop the block") {
  const Turn turn = cow({foot(Foot::rh, {found(Lesion::su, Claw::outside)}),
                         foot(Foot::lh, {}, {act(ActionKind::block_on, Claw::outside)})});
  CHECK(fired(turn, {}, first_of_november).empty());
}

TEST_CASE("a lesion whose claw was not called is not guessed to lie under the block") {
  const Turn turn = cow({foot(Foot::lh, {found(Lesion::su, Claw::not_called)},
                              {act(ActionKind::block_on, Claw::outside)})});
  CHECK(fired(turn, {}, first_of_november).empty());
}

TEST_CASE("the words name lesion and claw, and the answer the good claw") {
  const std::vector<Warning> warnings = check_turn(
      ulcer_and(act(ActionKind::block_on, Claw::outside)), {}, first_of_november, false, english());
  REQUIRE(warnings.size() == 1);
  CHECK(warnings[0].claw == Claw::outside);
  CHECK(warnings[0].words ==
        "Block on the claw with the sole ulcer (left hind outside). Inside meant?");
  CHECK(warnings[0].answers == Names{"no, inside", "go ahead"});
}

TEST_CASE("the answer names a foot that was not the last one named") {
  Turn turn = ulcer_and(act(ActionKind::block_on, Claw::outside));
  turn.feet.push_back(foot(Foot::rh, {found(Lesion::dd)}));
  const std::vector<Warning> warnings = check_turn(turn, {}, first_of_november, false, english());
  REQUIRE(warnings.size() == 1);
  CHECK(warnings[0].answers == Names{"LH no, inside", "go ahead"});
}

TEST_CASE("feet filled by rest fine do not count as named last") {
  Turn turn = ulcer_and(act(ActionKind::block_on, Claw::outside));
  turn.rest_fine = true;
  turn.feet.push_back(fine(Foot::rh));
  const std::vector<Warning> warnings = check_turn(turn, {}, first_of_november, true, english());
  REQUIRE(warnings.size() == 1);
  CHECK(warnings[0].answers == Names{"no, inside", "go ahead"});
}

TEST_CASE("no word of mouth is offered when it would change another act") {
  const Turn turn = cow(
      {foot(Foot::lh, {found(Lesion::su, Claw::outside)},
            {act(ActionKind::block_on, Claw::outside), act(ActionKind::opened, Claw::outside)})});
  const std::vector<Warning> warnings = check_turn(turn, {}, first_of_november, false, english());
  REQUIRE(warnings.size() == 1);
  CHECK(warnings[0].answers == Names{"go ahead"});
}

TEST_CASE("with both claws hurting there is no good claw to offer") {
  const Turn turn = cow(
      {foot(Foot::lh, {found(Lesion::su, Claw::both)}, {act(ActionKind::block_on, Claw::inside)})});
  const std::vector<Warning> warnings = check_turn(turn, {}, first_of_november, false, english());
  REQUIRE(warnings.size() == 1);
  CHECK(warnings[0].words ==
        "Left hind inside is blocked: both claws hurt, no good one for a block. Vet?");
}

TEST_CASE("a block left on from last time on a claw that hurts today is a stop") {
  const Turn turn =
      cow({foot(Foot::lh, {found(Lesion::wla, Claw::inside)}, {act(ActionKind::block_still_on)})});
  CHECK(fired(turn, blocked(Claw::inside).known, first_of_november) == on_painful);
  CHECK(fired(turn, blocked(Claw::outside).known, first_of_november).empty());
}

TEST_CASE("a block today on each claw of a foot is a stop") {
  const Turn turn = cow(
      {foot(Foot::lh, {},
            {act(ActionKind::block_on, Claw::inside), act(ActionKind::block_on, Claw::outside)})});
  CHECK(fired(turn, {}, first_of_november) == on_both);
  CHECK(fired(cow({foot(Foot::lh, {}, {act(ActionKind::block_on, Claw::both)})}), {},
              first_of_november) == on_both);
}

TEST_CASE("a block on each hind foot is none") {
  const Turn turn = cow({foot(Foot::lh, {}, {act(ActionKind::block_on, Claw::inside)}),
                         foot(Foot::rh, {}, {act(ActionKind::block_on, Claw::inside)})});
  CHECK(fired(turn, {}, first_of_november).empty());
}

TEST_CASE("a new block beside the old one that is still on is a stop") {
  const Turn turn = cow({foot(Foot::lh, {}, {act(ActionKind::block_on, Claw::outside)})});
  CHECK(fired(turn, blocked(Claw::inside).known, first_of_november) == on_both);
}

TEST_CASE("the old block taken off or lost makes room for the new one") {
  for (const ActionKind off : {ActionKind::block_off, ActionKind::block_came_off}) {
    const Turn turn = cow(
        {foot(Foot::lh, {}, {act(off, Claw::inside), act(ActionKind::block_on, Claw::outside)})});
    CHECK(fired(turn, blocked(Claw::inside).known, first_of_november).empty());
  }
}

TEST_CASE("refitted, stacked or blocked again on the same claw replaces the old block") {
  for (const ActionKind kind :
       {ActionKind::block_refitted, ActionKind::block_stacked, ActionKind::block_again}) {
    const Turn turn = cow({foot(Foot::lh, {}, {act(kind, Claw::inside)})});
    CHECK(fired(turn, blocked(Claw::inside).known, first_of_november).empty());
  }
}

TEST_CASE("the stop for two blocks says since when the old one is on") {
  const Turn turn = cow({foot(Foot::lh, {}, {act(ActionKind::block_on, Claw::outside)})});
  const std::vector<Warning> warnings =
      check_turn(turn, blocked(Claw::inside).known, first_of_november, false, english());
  REQUIRE(warnings.size() == 1);
  CHECK(warnings[0].words ==
        "Left hind: both claws blocked (inside since 2 Oct). A block rests one claw.");
}

TEST_CASE("a claw that hurts and a second block are one cause and give one stop") {
  const Turn turn = cow({foot(Foot::lh, {found(Lesion::su, Claw::outside)},
                              {act(ActionKind::block_on, Claw::outside)})});
  Names asked = on_painful;
  asked.emplace_back(
      "ask still-on-not-mentioned LH");  // of the old one, which the stop does not name
  CHECK(fired(turn, blocked(Claw::inside).known, first_of_november) == asked);
}

TEST_CASE("a block without a side is asked about at once") {
  const Turn turn = ulcer_and(act(ActionKind::block_on, Claw::not_called));
  CHECK(fired(turn, {}, first_of_november, false) == no_side);
  const std::vector<Warning> warnings = check_turn(turn, {}, first_of_november, false, english());
  CHECK(warnings[0].words == "Left hind: block on, which claw? The sole ulcer is outside.");
  CHECK(warnings[0].answers == Names{"LH block on inside", "LH block on outside", "go ahead"});
}

TEST_CASE("a side that follows from the only block of the foot is not asked about") {
  for (const ActionKind kind :
       {ActionKind::block_refitted, ActionKind::block_stacked, ActionKind::block_off}) {
    const Turn turn = cow({foot(Foot::lh, {}, {act(kind)})});
    CHECK(fired(turn, blocked(Claw::inside).known, first_of_november).empty());
  }
}

TEST_CASE("taken off without a side is asked about when both claws are blocked") {
  Past past = blocked(Claw::inside);
  past.then(cow({foot(Foot::lh, {}, {act(ActionKind::block_on, Claw::outside)})}),
            first_of_november - 10);
  CHECK(fired(cow({foot(Foot::lh, {}, {act(ActionKind::block_off)})}), past.known,
              first_of_november) == no_side);
}

TEST_CASE("taken off without a side and without a known block is not asked about") {
  CHECK(fired(cow({foot(Foot::lh, {}, {act(ActionKind::block_off)})}), {}, first_of_november)
            .empty());
}

TEST_CASE("a block on the claw that was opened is a stop, whatever lies under the horn") {
  const auto opened_and_blocked = [](Claw opened, Claw blocked) {
    return cow({foot(Foot::lh, {found(Lesion::wlf, Claw::outside)},
                     {act(ActionKind::opened, opened), act(ActionKind::block_on, blocked)})});
  };
  CHECK(fired(opened_and_blocked(Claw::outside, Claw::outside), {}, first_of_november) ==
        on_painful);
  CHECK(fired(opened_and_blocked(Claw::outside, Claw::inside), {}, first_of_november).empty());
  CHECK(fired(opened_and_blocked(Claw::not_called, Claw::outside), {}, first_of_november).empty());
  const Turn turn = opened_and_blocked(Claw::outside, Claw::outside);
  CHECK(check_turn(turn, {}, first_of_november, false, english())[0].words ==
        "Block on the claw that was opened (left hind outside). Inside meant?");
}

TEST_CASE("blocked again without its claw is asked about, whatever claw carried the block before") {
  const Turn again = cow({foot(Foot::lh, {}, {act(ActionKind::block_again, Claw::not_called)})});
  CHECK(fired(again, blocked(Claw::outside).known, first_of_november) == no_side);
}

TEST_CASE("a lesion of which no claw is called is where the same was found last") {
  const Turn before = cow({foot(Foot::lh, {found(Lesion::su, Claw::outside)})});
  const Turn now = cow({foot(Foot::lh, {found(Lesion::su, Claw::not_called, Degree::slight)},
                             {act(ActionKind::block_on, Claw::outside)})});
  CHECK(fired(now, Past().then(before, first_of_november - 30).known, first_of_november) ==
        on_painful);
  CHECK(fired(now, {}, first_of_november).empty());
  const Turn on_the_good_one =
      cow({foot(Foot::lh, {found(Lesion::su, Claw::not_called, Degree::slight)},
                {act(ActionKind::block_on, Claw::inside)})});
  CHECK(fired(on_the_good_one, Past().then(before, first_of_november - 30).known, first_of_november)
            .empty());
}

TEST_CASE("a second block does not hide behind the one on the claw that hurts") {
  const Turn turn = cow(
      {foot(Foot::lh, {found(Lesion::su, Claw::outside)},
            {act(ActionKind::block_on, Claw::outside), act(ActionKind::block_on, Claw::inside)})});
  const std::vector<Warning> warnings = check_turn(turn, {}, first_of_november, false, english());
  REQUIRE(warnings.size() == 2);
  CHECK(warnings[1].rule == "both-claws-blocked");
  CHECK(warnings[1].answers == Names{"LH no, no block on outside", "go ahead"});
}
