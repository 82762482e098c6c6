#include "core/trade/call_line/parser.hpp"

#include <doctest/doctest.h>

#include "tests/core/trade/call_line/saying.hpp"

using namespace evenclaw;

namespace {

Reading reading_of(std::string_view text, LineSort sort = LineSort::turn_or_visit) {
  return read_as(sort, text, saying::in_crush(), english());
}

}  // namespace

TEST_CASE("a half line is wrong in nothing but lacks something") {
  for (const char* text : {"LH z4", "LH wrap on, off", "LH see again 28", "no,", "LH other"}) {
    CAPTURE(text);
    const Reading reading = reading_of(text);
    CHECK(reading.faults.empty());
    CHECK(reading.missing.has_value());
    CHECK_FALSE(reading.whole());
  }
}

TEST_CASE("a whole line has taken every token") {
  const Reading reading = reading_of("LH outside SU, bad; wrap on, off Thu; note x, y");
  CHECK(reading.whole());
  CHECK(reading.tokens_taken == reading.tokens);
}

TEST_CASE("the reader knows where the line stands") {
  CHECK(reading_of("LH").spot == Spot::feet);
  CHECK(reading_of("LH outside").spot == Spot::loose);
  CHECK(reading_of("LH outside SU").spot == Spot::finding);
  CHECK(reading_of("LH block on").spot == Spot::block);
  CHECK(reading_of("LH wrap on, off").spot == Spot::time);
}

TEST_CASE("a line that begins with one number may be a turn or news, other lines are one thing") {
  CHECK(possible_sorts("412 lame", english()).size() == 2);
  CHECK(possible_sorts("LH lame", english()).size() == 1);
  CHECK(possible_sorts("news 412 gone", english()).front() == LineSort::news);
  CHECK(possible_sorts("", english()).size() == 1);
}

TEST_CASE("after a fault reading goes on at the next separator without following faults") {
  const Reading reading = reading_of("LJ SU; block on inside; RH DD raw");
  REQUIRE(reading.faults.size() == 1);
  CHECK(reading.faults.front().token == "LJ");
}

TEST_CASE("contradictions within a line are found where they stand") {
  const Reading reading = reading_of("LH not lifted; SU; RH SU; nothing found");
  REQUIRE(reading.faults.size() == 2);
  CHECK(reading.faults[0].column == 16);
  CHECK(reading.faults[1].column == 27);
}
