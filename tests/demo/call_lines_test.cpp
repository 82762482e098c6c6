#include "demo/call_lines.hpp"

#include <doctest/doctest.h>

namespace evenclaw::demo {

namespace {

using Lines = std::vector<std::string>;

}  // namespace

TEST_CASE("a cow with nothing found is one line") {
  CalledTurn turn;
  turn.number = 413;
  CHECK(call_lines(turn, four_feet) == Lines{"413 routine; nothing found"});
}

TEST_CASE("what was found stands before what was done, and the rest is fine") {
  CalledTurn turn;
  turn.number = 412;
  turn.reason = Reason::lame;
  turn.lame_on = Foot::lh;
  CalledFoot foot;
  foot.foot = Foot::lh;
  foot.findings = {{Lesion::wla, Claw::outside, Place::white_line_heel, Degree::bad},
                   {Lesion::sh, Claw::inside, Place::not_called, Degree::not_called}};
  foot.was_opened = true;
  foot.block = BlockCalled::put_on;
  foot.block_claw = Claw::inside;
  turn.feet = {foot};
  CHECK(call_lines(turn, four_feet) ==
        Lines{"412 lame LH",
              "LH outside white line abscess heel, bad; inside bruise; opened; block on inside",
              "rest fine"});
}

TEST_CASE("a sore is called with its stage and gets its spray and wrap") {
  CalledTurn turn;
  turn.number = 9;
  CalledFoot foot;
  foot.foot = Foot::rh;
  foot.findings = {{Lesion::dd, Claw::none, Place::behind, Degree::not_called, DdStage::m4_1}};
  foot.was_sprayed = true;
  foot.wrap = WrapCalled::put_on;
  turn.feet = {foot};
  CHECK(call_lines(turn, four_feet).at(1) == "RH DD M4.1 behind; spray; wrap on");
}

TEST_CASE("a block from before is told before what is under it") {
  CalledTurn turn;
  turn.number = 9;
  turn.reason = Reason::recheck;
  CalledFoot foot;
  foot.foot = Foot::lh;
  foot.block = BlockCalled::taken_off;
  foot.block_claw = Claw::inside;
  turn.feet = {foot};
  CHECK(call_lines(turn, four_feet) ==
        Lines{"9 recheck", "LH block taken off inside; nothing found", "rest fine"});
}

TEST_CASE("nothing is left to be fine when every foot of today was called, or nobody says so") {
  CalledTurn turn;
  turn.number = 9;
  CalledFoot foot;
  foot.findings = {{Lesion::ip, Claw::none, Place::between, Degree::plain}};
  foot.needs_vet = true;
  foot.foot = Foot::lh;
  turn.feet = {foot};
  foot.foot = Foot::rh;
  turn.feet.push_back(foot);
  CHECK(call_lines(turn, hind_feet).size() == 3);
  turn.rest_is_fine = false;
  CHECK(call_lines(turn, four_feet) == Lines{"9 routine",
                                             "LH foul between, plain; vet; told the farmer",
                                             "RH foul between, plain; vet; told the farmer"});
}

TEST_CASE(
    "the vet for a foot with nothing found is said with that foot, and an answer comes last") {
  CalledTurn turn;
  turn.number = 9;
  turn.reason = Reason::lame;
  turn.lame_on = Foot::rh;
  CalledFoot foot;
  foot.foot = Foot::rh;
  foot.needs_vet = true;
  turn.feet = {foot};
  turn.goes_ahead = true;
  CHECK(call_lines(turn, four_feet) ==
        Lines{"9 lame RH", "RH nothing found; RH vet; told the farmer", "rest fine; go ahead"});
}

TEST_CASE("a visit begins with what was done since last time and ends with done") {
  CalledVisit visit;
  visit.talk.wraps_off = {412, 513};
  visit.talk.gone = {77};
  visit.talk.blocks_came_off = {90};
  CalledTurn turn;
  turn.number = 5;
  visit.turns = {turn};
  CHECK(call_lines(visit) == Lines{"412, 513 wraps off", "90 block came off", "77 gone",
                                   "5 routine; nothing found", "done"});
}

}  // namespace evenclaw::demo
