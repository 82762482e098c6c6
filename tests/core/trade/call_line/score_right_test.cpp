#include "core/trade/call_line/score_right.hpp"

#include <doctest/doctest.h>

#include <string_view>
#include <vector>

#include "core/trade/call_line/spoken_tokens.hpp"
#include "tests/core/trade/call_line/saying.hpp"

using namespace evenclaw;
using namespace evenclaw::saying;

TEST_CASE("one digit and how far the scale runs are a score") {
  const auto is_a_score = [](std::string_view text) {
    return is_score(spoken_tokens(text, english()), 0, text, english());
  };
  for (const char* text : {"4/5", "2 of 3", "3 out of 5", "four of five"}) {
    CAPTURE(text);
    CHECK(is_a_score(text));
  }
  for (const char* text : {"4", "4/7", "412/413", "4 and 5", "4/", "5d", "bruise", ""}) {
    CAPTURE(text);
    CHECK_FALSE(is_a_score(text));
  }
}

TEST_CASE("behind no it puts the score right that was called") {
  CHECK(printed({"412 lame LH 3/5", "no, 4/5"}) == "412 lame LH; mobility 4 of 5");
  CHECK(printed({"412 mobility 2 of 3; no, 3 of 3"}) == "412 mobility 3 of 3");
}

TEST_CASE("where no score was called it mends nothing, and a number alone is still a cow's") {
  CHECK_FALSE(refusal_of({"412 LH SU", "no, 4/5"}).empty());
  CHECK(printed({"412 mobility 2 of 3", "no, 421"}) == "421 mobility 2 of 3");
}
