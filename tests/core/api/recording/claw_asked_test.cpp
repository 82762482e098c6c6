#include "core/api/recording/claw_asked.hpp"

#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "tests/core/trade/call_line/saying.hpp"

using namespace evenclaw;

namespace {

Warning which_claw(Foot foot) {
  Warning warning;
  warning.rule = "block-side-not-called";
  warning.foot = foot;
  warning.claw = Claw::not_called;
  for (const char* claw : {"inside", "outside"}) {
    warning.answers.push_back(std::string(word_of(foot)) + " block on " + claw);
  }
  warning.answers.emplace_back("go ahead");
  return warning;
}

TurnDraft called(std::vector<std::string> lines) {
  TurnDraft draft;
  bool cow_open = false;
  for (const std::string& line : lines) {
    REQUIRE(saying::say(draft, cow_open, line).empty());
  }
  return draft;
}

std::string answered(const char* text, const OpenQuestions& questions, const TurnDraft& so_far) {
  return answer_which_claw(text, questions, so_far, english()).value_or("nothing");
}

}  // namespace

TEST_CASE("a claw alone answers on which claw the block is, when that was asked just before") {
  const Warning left = which_claw(Foot::lh);
  const TurnDraft block_last = called({"410 LH SU; block"});
  const TurnDraft block_first = called({"410 LH block; SU"});
  for (const TurnDraft& draft : {block_last, block_first}) {
    CHECK(answered("inside", {{left}, {left}}, draft) == "block on inside");
    CHECK(answered("in", {{left}, {left}}, draft) == "block on inside");
    CHECK(answered("LH out", {{left}, {left}}, draft) == "block on outside");
    CHECK(answered("RH inside", {{left}, {left}}, draft) == "nothing");
    CHECK(answered("inside, bad", {{left}, {left}}, draft) == "nothing");
  }
  CHECK(answered("inside", {{left}, {}}, block_last) == "block on inside");
  CHECK(answered("inside", {{left}, {}}, block_first) == "nothing");
  CHECK(answered("inside", {{}, {}}, block_last) == "nothing");
}

TEST_CASE("a claw alone is the correction that was offered just before") {
  Warning missing;
  missing.foot = Foot::rh;
  missing.claw = Claw::inside;
  missing.answers = {"no, outside", "go ahead"};
  const OpenQuestions asked{{missing}, {missing}};
  CHECK(correction_to_claw("outside", asked, english()) == "no, outside");
  CHECK(correction_to_claw("RH out", asked, english()) == "no, outside");
  CHECK_FALSE(correction_to_claw("inside", asked, english()));
  CHECK_FALSE(correction_to_claw("LH outside", asked, english()));
  CHECK_FALSE(correction_to_claw("outside SU", asked, english()));
  CHECK_FALSE(correction_to_claw("outside", {{}, {missing}}, english()));
  CHECK_FALSE(correction_to_claw("outside", {{missing}, {}}, english()));
}

TEST_CASE("the correction of a block that was offered may name the block") {
  Warning painful;
  painful.rule = "block-on-painful-claw";
  painful.foot = Foot::rh;
  painful.claw = Claw::inside;
  painful.answers = {"no, outside", "go ahead"};
  const OpenQuestions asked{{painful}, {painful}};
  for (const char* said : {"no, block outside", "no block on outside", "RH no, block outside"}) {
    CAPTURE(said);
    CHECK(correction_to_claw(said, asked, english()) == "no, outside");
  }
  for (const char* said : {"no, block inside", "LH no, block outside", "no, block off outside",
                           "block outside", "no, block outside, wood", "no, block"}) {
    CAPTURE(said);
    CHECK_FALSE(correction_to_claw(said, asked, english()));
  }
  painful.rule = "claw-that-is-missing";
  CHECK_FALSE(correction_to_claw("no, block outside", {{painful}, {painful}}, english()));
}

TEST_CASE("where another foot is named since, the foot that was asked about is said with it") {
  const Warning left = which_claw(Foot::lh);
  CHECK(answered("inside", {{left}, {left}}, called({"410 LH SU; block; RH nothing found"})) ==
        "LH block on inside");
}

TEST_CASE("of both feet that are spoken of it is one answer, of one of two feet none") {
  const std::vector<Warning> both = {which_claw(Foot::lh), which_claw(Foot::rh)};
  CHECK(answered("in", {both, both}, called({"410 both hinds SU; block"})) == "block on inside");
  CHECK(answered("in", {both, both}, called({"410 LH SU; block; RH SU; block"})) == "nothing");
  CHECK(answered("LH in", {both, both}, called({"410 LH SU; block; RH SU; block"})) ==
        "LH block on inside");
}
