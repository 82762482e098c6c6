#include "core/trade/call_line/leg_behind_comma.hpp"

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

TEST_CASE("a foot behind lame and a comma is the leg and the foot spoken of") {
  const Row rows[] = {{{"501 lame, LH; SU outside"}, "501 lame LH // LH outside sole ulcer"},
                      {{"501 lame, front left"}, "501 lame LF // LF"},
                      {{"501 lame, LH, SU outside"}, "501 lame LH // LH outside sole ulcer"},
                      {{"501 fresh, lame, LH and RH"}, "501 fresh; lame both hinds // LH // RH"},
                      {{"501 lame 2 of 3, LH"}, "501 lame LH; mobility 2 of 3 // LH"},
                      {{"501", "lame, LH", "DD raw"}, "501 lame LH // LH DD raw"}};
  for (const Row& row : rows) {
    CAPTURE(row.lines.back());
    CHECK(saying::printed(row.lines) == row.printed);
  }
}

TEST_CASE("a foot of which something is said at once is not taken for the leg") {
  const Row rows[] = {{{"501 lame, LH SU outside"}, "501 lame // LH outside sole ulcer"},
                      {{"501 lame; LH"}, "501 lame // LH"},
                      {{"501 lame LH, RH SU"}, "501 lame LH // RH sole ulcer"},
                      {{"501 fresh, LH; SU"}, "501 fresh // LH sole ulcer"}};
  for (const Row& row : rows) {
    CAPTURE(row.lines.back());
    CHECK(saying::printed(row.lines) == row.printed);
  }
}
