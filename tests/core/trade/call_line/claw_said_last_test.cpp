#include "core/trade/call_line/claw_said_last.hpp"

#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "tests/core/trade/call_line/saying.hpp"

using namespace evenclaw;

namespace {

struct Row {
  std::vector<std::string> lines;
  const char* printed;
};

}  // namespace

TEST_CASE("no, inside is of what was called on the other claw, not of what never had one") {
  const Row rows[] = {
      {{"501", "RH SU outside, dished", "no, inside"}, "501 // RH inside sole ulcer; modelled"},
      {{"501 RH SU outside; opened; spray", "no, inside"},
       "501 // RH inside sole ulcer; opened; spray"},
      {{"501 RH SU outside; loose horn off", "no, inside"},
       "501 // RH inside sole ulcer; loose horn off"},
      {{"501 RH SU outside; bleeding does not stop", "no, inside"},
       "501 // RH inside sole ulcer; bleeding does not stop"},
      {{"501 RH SU outside; length 80 mm", "no, inside"},
       "501 // RH inside sole ulcer; length 80 mm"},
      {{"501 LH inside bruise; outside WLA; opened", "no, inside"},
       "501 // LH inside bruise; inside white line abscess; opened"},
      {{"501 RH SU outside, dished", "RF fine", "RH no, inside"},
       "501 // RF nothing found // RH inside sole ulcer; modelled"},
      {{"501 LH outside SU; block on outside; opened", "no, inside"},
       "501 // LH outside sole ulcer; block on inside; opened"}};
  for (const Row& row : rows) {
    CAPTURE(row.lines.front());
    CHECK(saying::printed(row.lines) == row.printed);
  }
}

TEST_CASE("where no claw was called it completes the only thing that can have one") {
  CHECK(saying::printed({"501 LH SU; spray", "no, inside"}) ==
        "501 // LH inside sole ulcer; spray");
}

TEST_CASE("where it could be of several it is asked") {
  struct Asked {
    std::vector<std::string> lines;
    const char* remedy;
  };

  const Asked rows[] = {
      {{"501 LH SU; opened", "no, inside"}, "say what is inside: such as \"{inside sole ulcer}\""},
      {{"501 LH outside SU; block on", "no, inside"},
       "of the block: \"{block on inside}\"; of the sole ulcer: \"{no, inside sole ulcer}\""}};
  for (const Asked& row : rows) {
    CAPTURE(row.lines.front());
    const Faults faults = saying::refusal_of(row.lines);
    REQUIRE(faults.size() == 1);
    CHECK(faults.front().message == "it is not clear of what the claw was wrong");
    CHECK(faults.front().remedy == row.remedy);
  }
}
