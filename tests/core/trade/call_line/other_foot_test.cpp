#include "core/trade/call_line/other_foot.hpp"

#include <doctest/doctest.h>

#include "tests/core/trade/call_line/saying.hpp"

using namespace evenclaw;

namespace {

TurnDraft draft_of(std::initializer_list<Foot> spoken_of, FootSet named_now) {
  TurnDraft draft;
  for (const Foot foot : spoken_of) {
    FootCall call;
    call.foot = foot;
    draft.turn.feet.push_back(call);
  }
  draft.feet_named = named_now;
  return draft;
}

}  // namespace

TEST_CASE("the other hind is the one nobody has spoken of yet") {
  const TurnDraft draft = draft_of({Foot::lh, Foot::rf}, FootSet{Foot::rf});
  CHECK(other_foot_named(draft, {hind_feet}) == Foot::rh);
}

TEST_CASE("when both were spoken of it is the one that is not spoken of now") {
  const TurnDraft draft = draft_of({Foot::lh, Foot::rh}, FootSet{Foot::rh});
  CHECK(other_foot_named(draft, {hind_feet}) == Foot::lh);
}

TEST_CASE("with none spoken of, or both named at once, nobody knows which is the other one") {
  CHECK_FALSE(other_foot_named(draft_of({Foot::rf}, FootSet{Foot::rf}), {hind_feet}));
  CHECK_FALSE(other_foot_named(draft_of({Foot::lh, Foot::rh}, hind_feet), {hind_feet}));
}

TEST_CASE("no, only RH takes off the other foot what was called of it too") {
  CHECK(saying::printed({"412 LH DD raw; RH DD raw behind; spray", "no, only RH"}) ==
        "412 // RH DD raw behind; spray");
  CHECK(saying::printed({"412 LH DD raw; outside SU; RH DD raw", "no, only RH"}) ==
        "412 // LH outside sole ulcer // RH DD raw");
  CHECK(saying::printed({"412 LH DD raw; RH DD raw", "no, only RH", "no, LH"}) ==
        "412 // LH DD raw");
}

TEST_CASE("no, only RH where something else was called of LH tells how that is taken back") {
  const Faults faults = saying::refusal_of({"412 LH SU; RH DD", "no, only RH"});
  REQUIRE(faults.size() == 1);
  CHECK(faults.front().message == "RH is what was said");
  CHECK(faults.front().remedy == "if nothing was found on {LH}, say \"{LH nothing after all}\"");
  CHECK(saying::printed({"412 LH SU; RH DD", "LH nothing after all"}) ==
        "412 // LH nothing found // RH DD");
}
