#include <doctest/doctest.h>

#include "tests/core/trade/told_turns.hpp"

using namespace evenclaw;
using namespace evenclaw::told;

namespace {

Past seen_before(const FootCall& call) {
  return Past().then(cow({call}), first_of_november - 12);
}

Turn with_act(ActionKind kind) {
  return cow({foot(Foot::lh, {}, {act(kind)}), fine(Foot::rh)});
}

const Names asked_where_it_is = {"ask wrap-or-block-not-known LH"};

}  // namespace

TEST_CASE("a wrap or block told of on a foot that was not known to carry one is asked about") {
  for (const ActionKind kind : {ActionKind::wrap_off, ActionKind::wrap_came_off,
                                ActionKind::block_off, ActionKind::block_came_off}) {
    CAPTURE(word_of(kind));
    CHECK(fired(with_act(kind), seen_before(fine(Foot::lh)).known, first_of_november, false) ==
          asked_where_it_is);
  }
}

TEST_CASE("so is a block refitted where none was known") {
  const Turn turn =
      cow({foot(Foot::lh, {}, {act(ActionKind::block_refitted, Claw::inside)}), fine(Foot::rh)});
  CHECK(fired(turn, seen_before(fine(Foot::lh)).known, first_of_november, false) ==
        asked_where_it_is);
}

TEST_CASE("the vet who was called may have put it on") {
  const Past vet = seen_before(foot(Foot::lh, {}, {act(ActionKind::vet)}));
  CHECK(fired(with_act(ActionKind::wrap_off), vet.known, first_of_november, false).empty());
}

TEST_CASE("of a cow who was never called before somebody else may have put it on") {
  CHECK(fired(with_act(ActionKind::wrap_off), {}, first_of_november).empty());
}

TEST_CASE("one that was known there is hers") {
  const Past wrapped = seen_before(foot(Foot::lh, {}, {act(ActionKind::wrap_on)}));
  CHECK(fired(with_act(ActionKind::wrap_off), wrapped.known, first_of_november).empty());
}

TEST_CASE("a new one in its place leaves no question") {
  const Turn turn = cow(
      {foot(Foot::lh, {found(Lesion::dd)}, {act(ActionKind::wrap_off), act(ActionKind::wrap_on)})});
  CHECK(fired(turn, seen_before(fine(Foot::lh)).known, first_of_november, false).empty());
}

TEST_CASE("one that is on the other foot is asked about as a slip of the side") {
  const Past wrapped = seen_before(foot(Foot::rh, {}, {act(ActionKind::wrap_on)}));
  const Turn turn = cow({foot(Foot::lh, {}, {act(ActionKind::wrap_off)}), fine(Foot::rh)});
  CHECK(fired(turn, wrapped.known, first_of_november, false) ==
        Names{"ask side-or-claw-swapped LH"});
}

TEST_CASE("told off on both, and only one was known: the other one is asked about") {
  const Past wrapped = seen_before(foot(Foot::rh, {}, {act(ActionKind::wrap_on)}));
  const Turn turn = cow({foot(Foot::rh, {}, {act(ActionKind::wrap_off)}),
                         foot(Foot::lh, {}, {act(ActionKind::wrap_off)})});
  CHECK(fired(turn, wrapped.known, first_of_november, false) == asked_where_it_is);
}
