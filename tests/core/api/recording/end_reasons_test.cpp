#include "core/api/recording/end_reasons.hpp"

#include <doctest/doctest.h>

#include <string>
#include <vector>

using namespace evenclaw;

namespace {

constexpr Day visit_day{20782};

Turn unfinished(const std::string& why) {
  Turn turn;
  turn.end = TurnEnd::unfinished;
  turn.end_reason = why;
  return turn;
}

std::string left_after(const std::string& why, std::string_view now) {
  Turn turn = unfinished(why);
  drop_said_again(turn, now, english());
  return turn.end == TurnEnd::done ? "done" : turn.end_reason;
}

}  // namespace

TEST_CASE("lines nobody could read are named in one reason") {
  const RefusedLine first("LH outsde", {}, english());
  const RefusedLine second("no, insde", {}, english());
  CHECK(not_understood({}).empty());
  CHECK(not_understood({first}) == "\"LH outsde\" was not understood");
  CHECK(not_understood({first, second}) == "\"LH outsde\", \"no, insde\" were not understood");
}

TEST_CASE("a line that is said again no longer keeps the turn from being done") {
  CHECK(left_after("\"no, insde\" was not understood", "180 no, inside") == "done");
  CHECK(left_after("\"no, insde\", \"RH brooze\" were not understood", "no, inside") ==
        "\"RH brooze\" was not understood");
}

TEST_CASE("every other reason stays") {
  CHECK(left_after("went down; \"no, insde\" was not understood", "no, inside") == "went down");
  CHECK(left_after("\"no, insde\" was not understood; the input ended", "no, inside") ==
        "the input ended");
  CHECK(left_after("'RH other \"x; y\" slihgt' was not understood", "no, inside") ==
        "'RH other \"x; y\" slihgt' was not understood");
  CHECK(left_after("'RH other \"x\", \"y\"', \"no, insde\" were not understood", "no, inside") ==
        "'RH other \"x\", \"y\"' was not understood");
}

TEST_CASE("a reason is added behind the others and dropped from among them") {
  Turn turn;
  add_end_reason(turn, nothing_was_said);
  CHECK(turn.end == TurnEnd::unfinished);
  add_end_reason(turn, "the input ended");
  CHECK(turn.end_reason == "nothing was said; the input ended");
  drop_end_reason(turn, nothing_was_said);
  CHECK(turn.end_reason == "the input ended");
  drop_end_reason(turn, "the input ended");
  CHECK(turn.end == TurnEnd::done);
}

TEST_CASE("who was not done at all stays so when a reason falls away") {
  Turn turn;
  turn.end = TurnEnd::not_done;
  turn.end_reason = "nothing was said";
  drop_end_reason(turn, nothing_was_said);
  CHECK(turn.end == TurnEnd::not_done);
}

TEST_CASE("an end that was called is told from one that was only missing") {
  CHECK(tell_its_end({"412", "unfinished, went down"}, visit_day, english()));
  CHECK_FALSE(tell_its_end({"412", "LH outside SU", "rest fine"}, visit_day, english()));
}

TEST_CASE("what is a reason already is told once") {
  Turn turn;
  add_end_reason(turn, "the input ended");
  add_end_reason(turn, "\"LH outsde\" was not understood");
  add_end_reason(turn, "the input ended");
  add_end_reason(turn, "\"LH outsde\", \"no, insde\" were not understood");
  CHECK(turn.end_reason ==
        "the input ended; \"LH outsde\" was not understood; \"no, insde\" was not understood");
}

TEST_CASE("two calls that were unfinished for the same reason tell it once") {
  Turn turn = unfinished(
      "\"LH outsde\" was not understood; went down; went down; "
      "\"LH outsde\" was not understood");
  tell_reasons_once(turn);
  CHECK(turn.end == TurnEnd::unfinished);
  CHECK(turn.end_reason == "\"LH outsde\" was not understood; went down");
}
