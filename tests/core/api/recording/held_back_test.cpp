#include "core/api/recording/held_back.hpp"

#include <doctest/doctest.h>

#include <string>

#include "core/trade/call_line/language.hpp"

using namespace evenclaw;

namespace {

bool goes_on_only(const char* text) {
  LineContext context;
  context.cow_open = true;
  const Result<Line> line = read_line(text, context, english());
  REQUIRE(line);
  return only_goes_on(*line);
}

}  // namespace

TEST_CASE("what means something of a cow that stands there calls none by itself") {
  for (const char* text :
       {"rest fine", "fronts fine", "RH nothing found", "walks sound", "milk 4d; meat 10d", "spray",
        "block inside", "no, chronic", "no, right hind", "no, mobility 3 of 3", "note as before",
        "kicks", "not done, ran out of time", "both wrapped"}) {
    CAPTURE(text);
    CHECK(goes_on_only(text));
  }
}

TEST_CASE("what is found, measured or done on a foot, and why she came, calls a cow") {
  for (const char* text : {"RH DD raw", "LH SU; rest fine", "LH spray", "lame LH", "recheck",
                           "mobility 3 of 3", "LH outside length 78 mm"}) {
    CAPTURE(text);
    CHECK_FALSE(goes_on_only(text));
  }
}

TEST_CASE("a number mended, and what is of no cow, goes on with none") {
  for (const char* text : {"no, 421", "done", "today hinds", ""}) {
    CAPTURE(text);
    CHECK_FALSE(goes_on_only(text));
  }
}
