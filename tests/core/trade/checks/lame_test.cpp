#include <doctest/doctest.h>

#include "tests/core/trade/told_lines.hpp"

using namespace evenclaw;
using namespace evenclaw::told;

namespace {

const FootSet left_hind = {Foot::lh};
const Names stop_look_again = {"stop lame-nothing-found LH"};

}  // namespace

TEST_CASE("lame on the left hind and nothing found there is a stop, said at once") {
  CHECK(fired(lame(cow({fine(Foot::lh)}), left_hind), {}, first_of_november, false) ==
        stop_look_again);
}

TEST_CASE("a finding on the lame foot is enough") {
  CHECK(fired(lame(cow({foot(Foot::lh, {found(Lesion::dd)})}), left_hind), {}, first_of_november)
            .empty());
}

TEST_CASE("a finding on the other foot does not explain the lame leg") {
  const Turn turn = lame(cow({foot(Foot::rh, {found(Lesion::dd)}), fine(Foot::lh)}), left_hind);
  CHECK(fired(turn, {}, first_of_november) == stop_look_again);
}

TEST_CASE("the vet called for that foot or for her settles it") {
  CHECK(fired(lame(cow({fine(Foot::lh, {act(ActionKind::vet)})}), left_hind), {}, first_of_november)
            .empty());
  Turn turn = lame(cow({fine(Foot::lh)}), left_hind);
  turn.actions = {act(ActionKind::vet)};
  CHECK(fired(turn, {}, first_of_november).empty());
}

TEST_CASE("the vet called for another foot does not") {
  const Turn turn =
      lame(cow({fine(Foot::lh), foot(Foot::rh, {found(Lesion::ip)}, {act(ActionKind::vet)})}),
           left_hind);
  CHECK(fired(turn, {}, first_of_november) == stop_look_again);
}

TEST_CASE("a foot nobody spoke of yet is not held against them while she stands there") {
  CHECK(fired(lame(cow({}), left_hind), {}, first_of_november, false).empty());
  CHECK(fired(lame(cow({fine(Foot::rh)}), left_hind), {}, first_of_november, false).empty());
}

TEST_CASE("let out with the lame foot never lifted is a stop") {
  const Turn turn = lame(cow({fine(Foot::rh)}), left_hind);
  CHECK(fired(turn, {}, first_of_november) == stop_look_again);
  CHECK(check_turn(turn, {}, first_of_november, true, english())[0].words ==
        "Came lame left hind, and that foot was not lifted: lift it, or vet.");
}

TEST_CASE("a foot that was worked on without a finding called is no stop") {
  const Turn turn =
      lame(cow({foot(Foot::lh, {}, {act(ActionKind::block_on, Claw::inside)})}), left_hind);
  CHECK(fired(turn, {}, first_of_november).empty());
}

TEST_CASE("a cow that was not done or not finished is not asked for the lame foot") {
  for (const TurnEnd end : {TurnEnd::not_done, TurnEnd::unfinished}) {
    Turn turn = lame(cow({}), left_hind);
    turn.end = end;
    CHECK(fired(turn, {}, first_of_november).empty());
  }
}

TEST_CASE("lame without a leg named and nothing found anywhere is a stop for the cow") {
  const Turn turn = lame(cow({fine(Foot::lh), fine(Foot::rh)}), {});
  CHECK(fired(turn, {}, first_of_november) == Names{"stop lame-nothing-found"});
  CHECK(fired(turn, {}, first_of_november, false).empty());
}

TEST_CASE("lame without a leg named and blisters on a foot is not nothing found") {
  for (const ActionKind seen : {ActionKind::blisters, ActionKind::pus_above}) {
    const Turn turn = lame(cow({foot(Foot::lf, {}, {act(seen)}), fine(Foot::lh)}), {});
    const Names all = fired(turn, {}, first_of_november);
    CHECK(std::find(all.begin(), all.end(), "stop lame-nothing-found") == all.end());
  }
}

TEST_CASE("lame without a leg named and a foot only named is a stop when she is let out") {
  const Turn turn = lame(cow({foot(Foot::lh, {})}), {});
  CHECK(fired(turn, {}, first_of_november) == Names{"stop lame-nothing-found"});
  CHECK(fired(turn, {}, first_of_november, false).empty());
  CHECK(fired(lame(cow({foot(Foot::lh, {}, {act(ActionKind::spray)})}), {}), {}, first_of_november)
            .empty());
}

TEST_CASE("lame without a leg named and something found is none") {
  const Turn turn = lame(cow({fine(Foot::lh), foot(Foot::rh, {found(Lesion::dd)})}), {});
  CHECK(fired(turn, {}, first_of_november).empty());
}

TEST_CASE("lame on both hinds with nothing found gives a stop for each") {
  const Turn turn = lame(cow({fine(Foot::lh), fine(Foot::rh)}), hind_feet);
  CHECK(fired(turn, {}, first_of_november, false) ==
        Names{"stop lame-nothing-found LH", "stop lame-nothing-found RH"});
}

TEST_CASE("the vet is the answer offered") {
  const std::vector<Warning> warnings =
      check_turn(lame(cow({fine(Foot::lh)}), left_hind), {}, first_of_november, false, english());
  CHECK(warnings[0].answers == Names{"LH vet", "go ahead"});
}

TEST_CASE("nothing found with a plan for her is asked about and no stop") {
  const Names asked = {"ask lame-cause-not-found LH"};
  CHECK(fired_on("412 lame LH\nLH nothing found; watch her walk in 7d") == asked);
  CHECK(fired_on("412 lame LH\nLH nothing found; see again 14d") == asked);
  CHECK(fired_on("412 lame; nothing found; see again 14d") == Names{"ask lame-cause-not-found"});
}

TEST_CASE("a plan for the other foot is no plan for the lame one") {
  CHECK(fired_on("412 lame LH\nLH nothing found\nRH outside bruise; see again 14d") ==
        Names{"stop lame-nothing-found LH"});
}

TEST_CASE("a plan does not excuse a lame foot that was not lifted") {
  CHECK(fired_on("412 lame LF\nLF not lifted; see again 14d") ==
        Names{"stop lame-nothing-found LF"});
}

TEST_CASE("one hind of a lame cow left on the ground is asked about") {
  const Names asked = {"ask one-hind-lifted RH"};
  CHECK(fired_on("412 lame LH\nLH DD raw behind\nRH not lifted") == asked);
  CHECK(fired_on("412 lame\nLH DD raw behind\nRH not lifted") == asked);
}

TEST_CASE("the other hind is not asked about when she is lame in front, was let go, or not lame") {
  CHECK(fired_on("412 lame LF\nLF injury\nLH nothing found; RH not lifted").empty());
  CHECK(fired_on("412 lame LH\nLH DD raw behind\nRH not lifted; unfinished, kicked").empty());
  CHECK(fired_on("412\nLH DD raw behind\nRH not lifted").empty());
}

TEST_CASE("of a hind foot nobody spoke of it is not known whether it was lifted") {
  CHECK(fired_on("412 lame LH\nLH DD raw behind").empty());
}

TEST_CASE("neither hind lifted is another matter") {
  CHECK(fired_on("412 lame LF\nLF injury; both hinds not lifted").empty());
}

TEST_CASE("lifted in an earlier turn of the visit counts") {
  ToldDay day = told_day("412 lame LH\nLH DD raw behind\nRH not lifted");
  TurnRow earlier;
  earlier.lifted = {Foot::rh};
  day.past.known.same_visit.push_back(earlier);
  CHECK(rules_fired(day.warnings(), false).empty());
}
