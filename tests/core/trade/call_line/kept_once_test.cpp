#include "core/trade/call_line/kept_once.hpp"

#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "tests/core/trade/call_line/saying.hpp"

using namespace evenclaw;

namespace {

struct SaidTwice {
  std::vector<std::string> lines;
  const char* turn;
};

void check_each(const std::vector<SaidTwice>& rows) {
  for (const SaidTwice& row : rows) {
    INFO(saying::joined(row.lines));
    CHECK(saying::printed(row.lines) == row.turn);
  }
}

}  // namespace

TEST_CASE("what was said twice of the wrong foot leaves nothing there when the foot is mended") {
  check_each({
      {{"329 LH SU outside", "LH SU outside", "no, RH"}, "329 // RH outside sole ulcer"},
      {{"329 RH DD raw", "RH DD raw; wrap on", "no, left hind"}, "329 // LH DD raw; wrap on"},
      {{"329 RH DD raw; wrap on", "RH DD raw; wrap on", "no, left hind"},
       "329 // LH DD raw; wrap on"},
      {{"329 RH DD raw; spray", "RH DD", "no, left hind"}, "329 // RH spray // LH DD raw"},
      {{"329 LH nothing found", "LH nothing found", "no, RH"}, "329 // RH nothing found"},
      {{"329 LH length 78mm", "LH length 78mm", "no, RH"}, "329 // RH length 78 mm"},
      {{"329 LH DD raw", "LH DD raw", "no, chronic", "no, RH"}, "329 // RH DD chronic"},
  });
}

TEST_CASE("what else was called of the foot before stays there") {
  check_each({
      {{"329 LH SU outside", "LH DD raw", "no, RH"}, "329 // LH outside sole ulcer // RH DD raw"},
      {{"329 LH SU outside", "LH SU inside", "no, RH"},
       "329 // LH outside sole ulcer // RH inside sole ulcer"},
      {{"329 both hinds DD", "LH DD raw", "no, RH"}, "329 // LH DD // RH DD raw"},
  });
}

TEST_CASE("no, only LH takes it off the other foot also when both were said twice") {
  check_each({
      {{"329 both hinds DD", "both hinds DD", "no, only LH"}, "329 // LH DD"},
      {{"329 RH DD raw", "both hinds DD", "no, only LH"}, "329 // LH DD"},
      {{"329 both hinds DD; wrap on", "both hinds DD; wrap on", "no, only LH"},
       "329 // LH DD; wrap on"},
  });
}

TEST_CASE("a claw that is mended is mended in all that was said alike") {
  check_each({
      {{"329 LH bruise inside slight", "LH bruise inside slight", "no, outside"},
       "329 // LH outside bruise, slight"},
      {{"329 LH bruise inside", "LH bruise", "no, outside"}, "329 // LH outside bruise"},
      {{"329 LH bruise inside", "rest fine", "LH bruise inside", "no, outside"},
       "329 rest fine // LH outside bruise"},
      {{"329 LH block on inside", "LH block on inside", "no, outside"},
       "329 // LH block on outside"},
      {{"329 LH bruise inside, bruise outside bad", "LH bruise inside", "no, outside"},
       "329 // LH outside bruise, bad"},
      {{"329 LH bruise inside", "LH SU outside", "no, inside"},
       "329 // LH inside bruise; inside sole ulcer"},
  });
}
