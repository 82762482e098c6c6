#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "core/api/recording.hpp"
#include "tests/core/api/workplace.hpp"

namespace evenclaw::test {

namespace {

/// Whether the cow in the crush is told to be unfinished when the input ends behind these lines.
bool breaks_off_behind(const std::vector<std::string>& lines) {
  Workplace place;
  Recording recording = place.record(place.start("2026-10-27", {}));
  for (const std::string& line : lines) (void)recording.say(line).value();
  return recording.would_be_unfinished();
}

}  // namespace

TEST_CASE("a cow of whom more may come is unfinished when the input ends") {
  CHECK(breaks_off_behind({"today hinds", "412 LH SU outside heel bad"}));
  CHECK(breaks_off_behind({"today hinds", "412 nothing found", "LH xyzzy"}));
}

TEST_CASE("a cow that was done with a question open is not unfinished when the input ends") {
  CHECK_FALSE(breaks_off_behind({"today hinds", "412 lame LH; RH nothing found", "done"}));
}

TEST_CASE("a cow called once more to answer what was asked is not unfinished by that") {
  CHECK_FALSE(breaks_off_behind({"today hinds", "96 LH DD raw behind; spray with footgel",
                                 "rest fine", "done", "done", "96 no withdrawal"}));
}

}  // namespace evenclaw::test
