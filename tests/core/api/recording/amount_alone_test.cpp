#include "core/api/recording/amount_alone.hpp"

#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "tests/core/trade/call_line/saying.hpp"

using namespace evenclaw;

namespace {

TurnDraft draft_of(const std::vector<std::string>& lines) {
  TurnDraft draft;
  bool cow_open = true;
  for (const std::string& line : lines) REQUIRE(saying::say(draft, cow_open, line).empty());
  return draft;
}

}  // namespace

TEST_CASE("a number with its unit and nothing else is an amount alone") {
  for (const char* line : {"3d", "28 d", "4 weeks", "42 mm", "7.5 cm", "8 milkings", "48 hours"}) {
    CAPTURE(line);
    CHECK(is_amount_alone(line, english()));
  }
  for (const char* line : {"3", "wrap 3d", "off 3d", "412", "412 lame", "2 of 3", "3d LH", ""}) {
    CAPTURE(line);
    CHECK_FALSE(is_amount_alone(line, english()));
  }
}

TEST_CASE("an amount is said again by a line that holds it") {
  CHECK(holds_the_amount("3d", "wrap on, off 3d", english()));
  CHECK(holds_the_amount("3d", "LH wrap 3 days", english()));
  CHECK(holds_the_amount("42 mm", "RH heel 42 mm", english()));
  CHECK(holds_the_amount("2d", "withdrawal 4d", english()));
  CHECK_FALSE(holds_the_amount("28d", "withdrawal 4d", english()));
  CHECK_FALSE(holds_the_amount("3d", "rest fine", english()));
  CHECK_FALSE(holds_the_amount("3d", "wrap on, off 4d", english()));
  CHECK_FALSE(holds_the_amount("3d", "see again 3 weeks", english()));
  CHECK_FALSE(holds_the_amount("42 mm", "heel 42 cm", english()));
}

TEST_CASE("days alone behind a wrap or block are when that comes off") {
  CHECK(off_of_the_last("3d", draft_of({"501 RH DD raw; wrap"}), english()) == "wrap on, off 3d");
  CHECK(off_of_the_last("4 weeks", draft_of({"501 RH SU; block on inside"}), english()) ==
        "block on inside, off 4 weeks");
}

TEST_CASE("behind anything else nobody knows what they are of") {
  for (const char* line : {"501 RH DD raw; wrap; spray", "501 RH DD raw; wrap 2d", "501 RH DD raw",
                           "501 RH wrap off", "501 RH DD raw; wrap; rest fine"}) {
    CAPTURE(line);
    CHECK_FALSE(off_of_the_last("3d", draft_of({line}), english()).has_value());
  }
  CHECK_FALSE(off_of_the_last("42 mm", draft_of({"501 RH DD raw; wrap"}), english()).has_value());
}
