#include <doctest/doctest.h>

#include "tests/core/trade/told_turns.hpp"

using namespace evenclaw;
using namespace evenclaw::told;

namespace {

FootCall lesion_on(Foot where, Lesion lesion, Claw claw) {
  return foot(where, {found(lesion, claw)});
}

FootCall ulcer(Foot where, Claw claw) {
  return lesion_on(where, Lesion::su, claw);
}

Past seen(FootCall call, int days_ago = 59) {
  return Past().then(cow({std::move(call)}), first_of_november - days_ago);
}

const Names asked_left = {"ask side-or-claw-swapped LH"};
const Names asked_right = {"ask side-or-claw-swapped RH"};

}  // namespace

TEST_CASE("the ulcer of last time called on the other claw is asked about at once") {
  const Past past = seen(ulcer(Foot::lh, Claw::outside));
  const Turn turn = cow({ulcer(Foot::lh, Claw::inside)});
  CHECK(fired(turn, past.known, first_of_november, false) == asked_left);
  const std::vector<Warning> warnings =
      check_turn(turn, past.known, first_of_november, false, english());
  CHECK(warnings[0].words == "The sole ulcer of 3 Sep was outside, left hind. Outside meant?");
  CHECK(warnings[0].answers == Names{"no, outside", "go ahead"});
}

TEST_CASE("the ulcer of last time called on the other foot is asked about") {
  const Past past = seen(ulcer(Foot::lh, Claw::outside));
  const Turn turn = cow({ulcer(Foot::rh, Claw::outside)});
  CHECK(fired(turn, past.known, first_of_november) == asked_right);
  const std::vector<Warning> warnings =
      check_turn(turn, past.known, first_of_november, true, english());
  CHECK(warnings[0].words == "The sole ulcer of 3 Sep was on left hind. Left hind meant?");
  CHECK(warnings[0].answers == Names{"no, LH", "go ahead"});
}

TEST_CASE("no word of mouth is offered that would move the block instead of the ulcer") {
  const Past past = seen(ulcer(Foot::lh, Claw::outside));
  const Turn turn = cow({foot(Foot::lh, {found(Lesion::su, Claw::inside)},
                              {act(ActionKind::block_on, Claw::outside)})});
  const std::vector<Warning> warnings =
      check_turn(turn, past.known, first_of_november, false, english());
  REQUIRE(warnings.size() == 1);
  CHECK(warnings[0].answers == Names{"go ahead"});
}

TEST_CASE("with the other foot still to come nothing is asked, unless it was called already") {
  const Past past = seen(ulcer(Foot::lh, Claw::outside));
  CHECK(fired(cow({ulcer(Foot::rh, Claw::outside)}), past.known, first_of_november, false).empty());
  const Turn turn = cow({fine(Foot::lh), ulcer(Foot::rh, Claw::outside)});
  CHECK(fired(turn, past.known, first_of_november, false) == asked_right);
}

TEST_CASE("both feet spoken of with words of their own are believed") {
  const Past past = seen(ulcer(Foot::lh, Claw::outside));
  CHECK(fired(cow({ulcer(Foot::rh, Claw::outside), ulcer(Foot::lh, Claw::outside)}), past.known,
              first_of_november)
            .empty());
  CHECK(fired(cow({ulcer(Foot::rh, Claw::outside), foot(Foot::lh, {found(Lesion::dd)})}),
              past.known, first_of_november)
            .empty());
}

TEST_CASE("the ulcer where it was is ordinary") {
  const Past past = seen(ulcer(Foot::lh, Claw::outside));
  CHECK(fired(cow({ulcer(Foot::lh, Claw::outside)}), past.known, first_of_november).empty());
  CHECK(fired(cow({ulcer(Foot::lh, Claw::not_called)}), past.known, first_of_november).empty());
  Turn both = cow({ulcer(Foot::lh, Claw::both)});
  both.actions = {act(ActionKind::vet)};
  CHECK(fired(both, past.known, first_of_november).empty());
}

TEST_CASE("an ulcer on both claws, one known and one new, is ordinary") {
  const Past past = seen(ulcer(Foot::lh, Claw::outside));
  Turn turn =
      cow({foot(Foot::lh, {found(Lesion::su, Claw::inside), found(Lesion::su, Claw::outside)})});
  turn.actions = {act(ActionKind::vet)};
  CHECK(fired(turn, past.known, first_of_november).empty());
}

TEST_CASE("a case that was gone, or is four months old, is not asked about") {
  Past healed = seen(ulcer(Foot::lh, Claw::outside));
  healed.then(cow({fine(Foot::lh)}), first_of_november - 20);
  CHECK(fired(cow({ulcer(Foot::rh, Claw::outside)}), healed.known, first_of_november).empty());
  const Past old = seen(ulcer(Foot::lh, Claw::outside), 121);
  CHECK(fired(cow({ulcer(Foot::rh, Claw::outside)}), old.known, first_of_november).empty());
}

TEST_CASE("skin disease and heel erosion change feet without a question") {
  for (const Lesion lesion : {Lesion::dd, Lesion::id, Lesion::hhe, Lesion::ip, Lesion::ih,
                              Lesion::sh, Lesion::ds, Lesion::ts}) {
    CAPTURE(word_of(lesion));
    const Past past = seen(lesion_on(Foot::lh, lesion, Claw::outside));
    for (const FootCall& now :
         {lesion_on(Foot::rh, lesion, Claw::outside), lesion_on(Foot::lh, lesion, Claw::inside)}) {
      Turn turn = cow({now});
      turn.actions = {act(ActionKind::vet)};
      CHECK(fired(turn, past.known, first_of_november).empty());
    }
  }
}

TEST_CASE("another lesion on the other foot is another lesion") {
  const Past past = seen(ulcer(Foot::lh, Claw::outside));
  CHECK(fired(cow({lesion_on(Foot::rh, Lesion::wla, Claw::outside)}), past.known, first_of_november)
            .empty());
  CHECK(fired(cow({lesion_on(Foot::rh, Lesion::tu, Claw::outside)}), past.known, first_of_november)
            .empty());
  CHECK(fired(cow({lesion_on(Foot::rh, Lesion::su, Claw::inside)}), past.known, first_of_november)
            .empty());
}

TEST_CASE("an ulcer that came out of blood on the same claw is not swapped") {
  Past past =
      seen(foot(Foot::lh, {found(Lesion::su, Claw::outside), found(Lesion::sh, Claw::inside)}));
  CHECK(fired(cow({ulcer(Foot::lh, Claw::inside)}), past.known, first_of_november).empty());
}

TEST_CASE("a hind foot is never taken for a front foot") {
  const Past past = seen(ulcer(Foot::lh, Claw::outside));
  CHECK(fired(cow({ulcer(Foot::lf, Claw::outside)}), past.known, first_of_november).empty());
}

TEST_CASE("a wrap told of on the wrong foot is one question, not two") {
  const Past past = seen(foot(Foot::lh, {}, {act(ActionKind::wrap_on)}), 6);
  for (const ActionKind kind :
       {ActionKind::wrap_off, ActionKind::wrap_came_off, ActionKind::wrap_still_on}) {
    const Turn turn = cow({foot(Foot::rh, {}, {act(kind)})});
    CHECK(fired(turn, past.known, first_of_november) == asked_right);
  }
  const std::vector<Warning> warnings =
      check_turn(cow({foot(Foot::rh, {}, {act(ActionKind::wrap_off)})}), past.known,
                 first_of_november, false, english());
  CHECK(warnings[0].words == "The wrap of 26 Oct is on left hind. Left hind meant?");
}

TEST_CASE("wraps told of on both feet are no slip of the side") {
  const Past past = seen(foot(Foot::lh, {}, {act(ActionKind::wrap_on)}), 6);
  const Turn turn = cow({foot(Foot::rh, {}, {act(ActionKind::wrap_off)}),
                         foot(Foot::lh, {}, {act(ActionKind::wrap_off)})});
  CHECK(fired(turn, past.known, first_of_november) == Names{"ask wrap-or-block-not-known RH"});
}

TEST_CASE("a wrap taken off that nobody recorded is believed") {
  CHECK(
      fired(cow({foot(Foot::rh, {}, {act(ActionKind::wrap_off)})}), {}, first_of_november).empty());
}

TEST_CASE("a new wrap on the other foot is ordinary") {
  const Past past = seen(foot(Foot::lh, {}, {act(ActionKind::wrap_on)}), 6);
  const Turn turn = cow({foot(Foot::rh, {}, {act(ActionKind::wrap_on)}),
                         foot(Foot::lh, {}, {act(ActionKind::wrap_off)})});
  CHECK(fired(turn, past.known, first_of_november).empty());
}

TEST_CASE("a block told of on the wrong claw is asked about") {
  const Past past = seen(foot(Foot::lh, {}, {act(ActionKind::block_on, Claw::inside)}), 28);
  const Turn turn = cow({foot(Foot::lh, {}, {act(ActionKind::block_off, Claw::outside)})});
  CHECK(fired(turn, past.known, first_of_november) == asked_left);
  CHECK(check_turn(turn, past.known, first_of_november, false, english())[0].words ==
        "The block of 4 Oct is inside, left hind. Inside meant?");
}

TEST_CASE("a second block on a block of this same turn is not held against the past") {
  const Past past = seen(foot(Foot::lh, {}, {act(ActionKind::block_on, Claw::inside)}), 28);
  const Turn turn = cow({foot(Foot::rh, {},
                              {act(ActionKind::block_on, Claw::inside),
                               act(ActionKind::block_stacked, Claw::inside)}),
                         foot(Foot::lh, {}, {act(ActionKind::block_off)})});
  CHECK(fired(turn, past.known, first_of_november).empty());
}

TEST_CASE("a new block on the claw of the open case is asked about when nothing was called") {
  const Past past = seen(ulcer(Foot::lh, Claw::outside));
  const Turn turn = cow({foot(Foot::lh, {}, {act(ActionKind::block_on, Claw::outside)})});
  CHECK(fired(turn, past.known, first_of_november, false) == asked_left);
  CHECK(check_turn(turn, past.known, first_of_november, false, english())[0].words ==
        "The sole ulcer of 3 Sep was outside, where the block goes. Inside meant?");
  const Turn beside = cow({foot(Foot::lh, {}, {act(ActionKind::block_on, Claw::inside)})});
  CHECK(fired(beside, past.known, first_of_november).empty());
}

TEST_CASE(
    "a new block without a finding, while the open case is on the other foot, is asked about") {
  const Past past = seen(ulcer(Foot::lh, Claw::outside));
  const Turn turn = cow({foot(Foot::rh, {}, {act(ActionKind::block_on, Claw::inside)})});
  CHECK(fired(turn, past.known, first_of_november) == asked_right);
}

TEST_CASE("the wrong claw called and a block that looks wrong for it are one stop") {
  const Past past = seen(ulcer(Foot::lh, Claw::outside));
  const Turn turn = cow({foot(Foot::lh, {found(Lesion::su, Claw::inside)},
                              {act(ActionKind::block_on, Claw::inside)})});
  CHECK(fired(turn, past.known, first_of_november) == Names{"stop block-on-painful-claw LH"});
}

TEST_CASE("lame left, the ulcer of the left called right: one stop") {
  const Past past = seen(ulcer(Foot::lh, Claw::outside));
  const Turn turn = lame(cow({fine(Foot::lh), ulcer(Foot::rh, Claw::outside)}), {Foot::lh});
  CHECK(fired(turn, past.known, first_of_november) == Names{"stop lame-nothing-found LH"});
}
