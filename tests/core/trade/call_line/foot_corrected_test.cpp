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
