#include "core/api/recording/answer_in_short.hpp"

#include <doctest/doctest.h>

#include <string>

using namespace evenclaw;

namespace {

Warning still_on(const char* foot) {
  Warning warning;
  warning.rule = "still-on-not-mentioned";
  warning.foot = foot == std::string_view("LH") ? Foot::lh : Foot::rh;
  warning.claw = Claw::none;
  for (const char* fate : {"still on", "came off by itself", "taken off", "don't know"}) {
    warning.answers.push_back(std::string(foot) + " wrap " + fate);
  }
  return warning;
}

Warning withdrawal() {
  Warning warning;
  warning.rule = "withdrawal-missing";
  warning.answers = {"no withdrawal", "go ahead"};
  return warning;
}

std::string meant(std::string_view text, const std::vector<Warning>& open) {
  return answer_in_short(text, open, english()).value_or("nothing");
}

struct Row {
  const char* said;
  const char* meant;
};

}  // namespace

TEST_CASE("whether a wrap is still on is answered in short") {
  constexpr Row rows[] = {{"taken off", "LH wrap taken off"},
                          {"still on", "LH wrap still on"},
                          {"came off", "LH wrap came off"},
                          {"off", "LH wrap off"},
                          {"gone", "LH wrap gone"},
                          {"don't know", "LH wrap don't know"},
                          {"on", "nothing"},
                          {"perhaps", "nothing"}};
  for (const Row& row : rows) {
    CAPTURE(row.said);
    CHECK(meant(row.said, {still_on("LH")}) == row.meant);
  }
}

TEST_CASE("of two feet it is said which") {
  CHECK(meant("taken off", {still_on("LH"), still_on("RH")}) == "nothing");
}

TEST_CASE("how long milk and meat are held back is answered by a time") {
  constexpr Row rows[] = {{"2d", "withdrawal 2d"},
                          {"96 hours", "withdrawal 96 hours"},
                          {"8 milkings", "milk withheld 8 milkings"},
                          {"Thu", "withdrawal Thu"},
                          {"2", "nothing"},
                          {"90 hours", "nothing"}};
  for (const Row& row : rows) {
    CAPTURE(row.said);
    CHECK(meant(row.said, {withdrawal()}) == row.meant);
  }
}

TEST_CASE("that a time alone was taken for milk and meat is told") {
  CHECK(told_in_full("withdrawal 2d", english()) ==
        "withdrawal 2d (milk and meat; of the milk alone: milk withheld 2d)");
  CHECK(told_in_full("milk withheld 8 milkings", english()) == "milk withheld 8 milkings");
  CHECK(told_in_full("LH wrap taken off", english()) == "LH wrap taken off");
}

TEST_CASE("a time alone is of what was not told of yet") {
  CHECK(answer_in_short("10d", {withdrawal()}, english(), {true, false}) == "meat withheld 10d");
  CHECK(answer_in_short("4d", {withdrawal()}, english(), {false, true}) == "milk withheld 4d");
}

TEST_CASE("a time alone answers no question where the withdrawal of two medicines is asked for") {
  const std::vector<Warning> two = {withdrawal(), withdrawal()};
  CHECK(meant("2d", two) == "nothing");
  CHECK(withdrawal_of_all("2d", two, english(), {}) == "withdrawal 2d");
  CHECK(withdrawal_of_all("2d", {withdrawal()}, english(), {}) == std::nullopt);
  CHECK(withdrawal_of_all("LH nothing found", two, english(), {}) == std::nullopt);
}

TEST_CASE("a line that says something by itself, or that nobody asked for, is no answer") {
  CHECK(meant("LH nothing found", {still_on("LH")}) == "nothing");
  CHECK(meant("taken off", {}) == "nothing");
  CHECK(meant("2d", {still_on("LH")}) == "nothing");
}
