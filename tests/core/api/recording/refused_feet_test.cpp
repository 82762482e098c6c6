#include "core/api/recording/refused_feet.hpp"

#include <doctest/doctest.h>

#include <string>
#include <vector>

using namespace evenclaw;

namespace {

std::string told(const RefusedFeet& feet) {
  std::string text = to_text(feet.named);
  if (!feet.one_of.empty()) text += "one of " + to_text(feet.one_of);
  return feet.any_foot ? text + "any foot" : text;
}

struct LineWithFeet {
  const char* text;
  const char* feet;
};

Turn turn_with(FootSet feet, bool rest_fine) {
  Turn turn;
  turn.rest_fine = rest_fine;
  for (const Foot foot : all_feet) {
    FootCall call;
    call.foot = foot;
    call.state = FootState::nothing_found;
    if (feet.has(foot)) turn.feet.push_back(call);
  }
  return turn;
}

FootSet open_after(const char* refused, FootSet called, bool rest_fine) {
  const RefusedLine line(refused, {}, english());
  return line.left_open(turn_with(called, rest_fine), hind_feet);
}

}  // namespace

TEST_CASE("the feet of a line nobody could read are found by their words") {
  const std::vector<LineWithFeet> rows = {
      {"LH outsde SU", "LH"},
      {"left hind abces, RH foul smel", "LH RH"},
      {"both hinds sort of raw", "LH RH"},
      {"412 LH SU; blck on", "LH"},
      {"412 lame LH, kiks", ""},
      {"412 lame on LH and RH, kiks", ""},
      {"412 lame LH; RH abces", "RH"},
      {"no, right hnd", "one of RH"},
      {"413 LHH sole ulcer", "one of LH"},
      {"4l3 lame RH", ""},
      {"4l3 RH abces", "RH"},
      {"LG outside SU", "one of LF LH"},
      {"hinfs raw", "one of LH RH"},
      {"sole ulcer midle", "any foot"},
      {"wrap of", "any foot"},
      {"kiks like mad", ""},
      {"rest fin", ""},
      {"", ""},
  };
  for (const LineWithFeet& row : rows) {
    CAPTURE(row.text);
    CHECK(told(feet_in_refused(row.text, english())) == row.feet);
  }
}

TEST_CASE("a named foot is open until it is called") {
  CHECK(open_after("LH outsde SU", {}, false) == FootSet{Foot::lh});
  CHECK(open_after("LH outsde SU", {Foot::rh}, true) == FootSet{Foot::lh});
  CHECK(open_after("LH outsde SU", {Foot::lh}, true).empty());
}

TEST_CASE("a foot that was only named or trimmed has not been called") {
  Turn turn;
  FootCall trimmed;
  trimmed.foot = Foot::lh;
  trimmed.trimmed = Trimmed::yes;
  turn.feet.push_back(trimmed);
  CHECK(RefusedLine("LH outsde SU", {}, english()).left_open(turn, hind_feet) == FootSet{Foot::lh});
}

TEST_CASE("words without a foot leave open the foot that was spoken of") {
  const RefusedLine line("sole ulcer midle", {Foot::lh}, english());
  CHECK(line.left_open(turn_with({Foot::rh}, true), hind_feet) == FootSet{Foot::lh});
}

TEST_CASE("what became of a wrap tells nothing of what was found on the feet") {
  CHECK(open_after("wrap off, nothing found", {}, true).empty());
  CHECK(open_after("block gone; sole ulcer", {}, true) == hind_feet);
}

TEST_CASE("a foot word with a slip leaves open what it may mean, until one of them is called") {
  CHECK(open_after("LG outside SU", {Foot::rh}, true) == FootSet{Foot::lf, Foot::lh});
  CHECK(open_after("LG outside SU", {Foot::lh}, true).empty());
}

TEST_CASE("a finding without a foot keeps rest fine from filling any of today's feet") {
  CHECK(open_after("sole ulcer midle", {Foot::lh}, true) == FootSet{Foot::rh});
  CHECK(open_after("sole ulcer midle", {Foot::lh}, false).empty());
}
