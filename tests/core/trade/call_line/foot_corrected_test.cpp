#include "core/trade/call_line/foot_corrected.hpp"

#include <string>
#include <vector>

#include "tests/core/trade/call_line/saying.hpp"

using namespace evenclaw;

TEST_CASE("behind the foot that was named anew a correction moves all that was called of it") {
  const struct {
    std::vector<std::string> lines;
    const char* turn;
  } rows[] = {{{"410 LH SU outside; block inside; RF nothing found", "LH no, RH"},
               "410 // RF nothing found // RH outside sole ulcer; block on inside"},
              {{"410 LH SU outside; RF nothing found; LH, no, RH"},
               "410 // RF nothing found // RH outside sole ulcer"},
              {{"410 LH SU outside; RF nothing found", "LH no, RH; spray"},
               "410 // RF nothing found // RH outside sole ulcer; spray"},
              {{"410 LH SU; RF nothing found", "LH no, RH DD raw"},
               "410 // LH sole ulcer // RF nothing found // RH DD raw"},
              {{"410 LH", "no, RH DD raw"}, "410 // RH DD raw"},
              {{"410 RH nothing found; LH SU; RF nothing found", "LH no, RH"},
               "410 // RH sole ulcer // RF nothing found"}};

  for (const auto& row : rows) {
    INFO(saying::joined(row.lines));
    CHECK(saying::printed(row.lines) == row.turn);
  }
}

TEST_CASE("parted over two lines it is asked which of the two was wrong") {
  const Faults faults = saying::refusal_of({"410 LH SU; RF nothing found", "LH", "no, RH"});
  REQUIRE(faults.size() == 1);
  CHECK(faults.front().remedy.find("in one line") != std::string::npos);
  CHECK_FALSE(saying::refusal_of({"410 LH SU; RF nothing found", "LH no, LH"}).empty());
}

TEST_CASE("a finding of a foot that was said to be fine moves nothing there from another one") {
  const std::vector<std::string> rows[] = {
      {"107 LH SU outside; rest fine; no, RH DD raw"},
      {"107 LH SU outside, block inside; rest fine; no, RF bruise outside"},
      {"107 LH SU outside; rest fine", "no, RH DD raw"},
      {"107 LH SU outside; fronts fine", "no, RF bruise outside"}};

  for (const auto& lines : rows) {
    INFO(saying::joined(lines));
    const Faults faults = saying::refusal_of(lines);
    REQUIRE(faults.size() == 1);
    CHECK(faults.front().remedy.find("and what was found") != std::string::npos);
  }
}

TEST_CASE("what is offered for a foot that was said to be fine can be said") {
  const struct {
    std::vector<std::string> lines;
    const char* turn;
  } rows[] = {
      {{"107 LH SU outside; rest fine", "RH DD raw"},
       "107 rest fine // LH outside sole ulcer // RH DD raw"},
      {{"107 LH SU outside; rest fine", "LH no, RH"}, "107 rest fine // RH outside sole ulcer"},
      {{"107 LH SU outside; rest fine; LH no, RH"}, "107 rest fine // RH outside sole ulcer"}};

  for (const auto& row : rows) {
    INFO(saying::joined(row.lines));
    CHECK(saying::printed(row.lines) == row.turn);
  }
}
