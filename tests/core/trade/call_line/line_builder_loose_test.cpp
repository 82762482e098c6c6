// Details that stand before their lesion or act, or behind a separator.
#include <string>
#include <vector>

#include "tests/core/trade/call_line/saying.hpp"

using namespace evenclaw;

TEST_CASE("behind a semicolon a claw leads the finding, not what was done before") {
  const struct {
    const char* line;
    const char* turn;
  } rows[] = {{"410 RH block; outside, SU heel", "410 // RH outside sole ulcer heel; block on"},
              {"410 LF opened; inside, WLA", "410 // LF inside white line abscess; opened"},
              {"410 RH wrap, outside, SU", "410 // RH outside sole ulcer; wrap on"},
              {"410 RH block inside, outside, SU", "410 // RH outside sole ulcer; block on inside"},
              {"410 RH block; outside SU", "410 // RH outside sole ulcer; block on"},
              {"410 RH block, outside; SU", "410 // RH sole ulcer; block on outside"},
              {"410 RH block; outside, opened", "410 // RH block on outside; opened"},
              {"410 RH block; outside, see again 28d", "410 // RH block on outside; see again 28d"},
              {"410 RH block; outside", "410 // RH block on outside"},
              {"410 RH bruise, outside, SU", "410 // RH outside bruise; sole ulcer"}};

  for (const auto& row : rows) {
    CAPTURE(row.line);
    CHECK(saying::printed({row.line}) == row.turn);
  }
}

TEST_CASE("parted alike from what was done and what was found a claw is asked about") {
  for (const char* line : {"410 RH block, outside, SU heel", "410 LF opened, inside, WLA",
                           "410 RH block; outside; SU"}) {
    CAPTURE(line);
    const Faults faults = saying::faults_of(line);
    REQUIRE(faults.size() == 1);
    CHECK(faults.front().remedy.find("\" or \"") != std::string::npos);
  }
}
