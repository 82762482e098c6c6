#include "core/api/recording/number_slip.hpp"

#include <doctest/doctest.h>

using namespace evenclaw;

namespace {

NearCow with_block(const char* number, Foot foot) {
  OnFootRow block;
  block.foot = foot;
  block.fixture = Fixture::block;
  NearCow cow;
  cow.number = number;
  cow.on_her = {block};
  return cow;
}

Turn turn_321(Reason reason, ActionKind act) {
  FootCall call;
  call.foot = Foot::rh;
  call.actions.resize(1);
  call.actions.front().kind = act;
  Turn turn;
  turn.cow.number = "321";
  turn.reason = reason;
  turn.feet = {call};
  return turn;
}

}  // namespace

TEST_CASE("a slip is one digit, or two neighbours swapped") {
  for (const char* known : {"231", "312", "32", "3210", "421"}) {
    CAPTURE(known);
    CHECK(is_slip_of("321", known));
  }
  for (const char* known : {"321", "123", "421x", "4321x", "77", "132"}) {
    CAPTURE(known);
    CHECK_FALSE(is_slip_of("321", known));
  }
}

TEST_CASE("a block renewed on a cow who is new here is a near cow's who has one on that foot") {
  const Turn turn = turn_321(Reason::not_called, ActionKind::block_again);
  const auto asked = known_cow_meant(turn, {with_block("231", Foot::rh)}, english());
  REQUIRE(asked);
  CHECK(asked->words == "321 is new here; 231 has a block on right hind. 231 meant?");
  CHECK(asked->answers.front() == "no, 231");
  CHECK_FALSE(known_cow_meant(turn, {with_block("231", Foot::lh)}, english()));
  CHECK_FALSE(known_cow_meant(turn, {}, english()));
}

TEST_CASE("a recheck of a cow who is new here is asked about when a near cow has something open") {
  const Turn turn = turn_321(Reason::recheck, ActionKind::spray);
  CHECK(known_cow_meant(turn, {with_block("231", Foot::lh)}, english()));
  NearCow nothing_open;
  nothing_open.number = "231";
  CHECK_FALSE(known_cow_meant(turn, {nothing_open}, english()));
}

TEST_CASE("ordinary work on a new cow asks nothing") {
  CHECK_FALSE(known_cow_meant(turn_321(Reason::routine, ActionKind::block_on),
                              {with_block("231", Foot::rh)}, english()));
}

TEST_CASE("the known cow who was asked about is named, and is the one who stands there") {
  Turn turn;
  turn.cow.number = "321";
  turn.reason = Reason::recheck;
  const auto asked = known_cow_meant(turn, {with_block("231", Foot::lh)}, english());
  REQUIRE(asked);
  CowSaid named;
  named.number = "0231";
  CHECK(is_the_known_cow(turn, {*asked}, named, english()));
  CHECK_FALSE(is_the_known_cow(turn, {}, named, english()));
  named.number = "232";
  CHECK_FALSE(is_the_known_cow(turn, {*asked}, named, english()));
}

TEST_CASE("what was called of a foot is of the cow who was named first") {
  const Turn turn = turn_321(Reason::recheck, ActionKind::spray);
  const auto asked = known_cow_meant(turn, {with_block("231", Foot::lh)}, english());
  REQUIRE(asked);
  CowSaid named;
  named.number = "231";
  CHECK_FALSE(is_the_known_cow(turn, {*asked}, named, english()));
}
