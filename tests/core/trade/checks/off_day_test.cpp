#include <doctest/doctest.h>

#include "tests/core/trade/told_lines.hpp"

using namespace evenclaw;
using namespace evenclaw::told;

namespace {

constexpr const char* asked_lh = "ask comes-off-on-that-day LH";

}  // namespace

TEST_CASE("a wrap that is to come off after more than seven days is asked about") {
  CHECK(fired_on("412\nLH DD raw behind; wrap on, off 7d").empty());
  CHECK(fired_on("412\nLH DD raw behind; wrap on, off Thu").empty());
  CHECK(fired_on("412\nLH DD raw behind; wrap on, off tomorrow").empty());
  CHECK(fired_on("412\nLH DD raw behind; wrap on, off 8d") == Names{asked_lh});
  CHECK(fired_on("412\nLH DD raw behind; wrap on, off a fortnight") == Names{asked_lh});
  CHECK(fired_on("412\nLH DD raw behind; wrap on, off 30d") == Names{asked_lh});
}

TEST_CASE("a block that is to come off within two weeks or after six is asked about") {
  constexpr const char* block = "412\nLH outside bruise; block on inside, off ";
  for (const char* day : {"14d", "4 weeks", "6 weeks"}) {
    CAPTURE(day);
    CHECK(fired_on(std::string(block) + day).empty());
  }
  for (const char* day : {"2d", "Thu", "13d", "43d", "28 weeks"}) {
    CAPTURE(day);
    CHECK(fired_on(std::string(block) + day) == Names{asked_lh});
  }
}

TEST_CASE("what was on before and stays on may come off on any day") {
  CHECK(fired_on("412\nLH outside bruise; block on inside\n---\n412\nLH outside bruise; block "
                 "still on, off 5d")
            .empty());
}

TEST_CASE("the words say what was heard and what is usual") {
  CHECK(told_day("412\nLH DD raw behind; wrap on, off 30d").warnings()[0].words ==
        "Left hind: wrap off in 30 days? A wrap comes off after 3 to 7.");
  CHECK(told_day("412\nLH outside bruise; block on inside, off 2d").warnings()[0].words ==
        "Left hind inside: block off in 2 days? A block needs about 4 weeks.");
  CHECK(told_day("412\nLH outside bruise; block on inside, off 90d").warnings()[0].words ==
        "Left hind inside: block off in 90 days? Past 6 weeks a block tips her back.");
}

TEST_CASE("the answer puts the usual day in its place") {
  const ToldDay wrap = told_day("412\nLH DD raw behind; wrap on, off 30d");
  CHECK(wrap.warnings()[0].answers ==
        std::vector<std::string>{"LH no, no wrap on; wrap on, off 5d", "go ahead"});
  CHECK(fired_on("412\nLH DD raw behind; wrap on, off 30d\nLH no, no wrap on; wrap on, off 5d")
            .empty());
  CHECK(fired_on("412\nLH outside bruise; block on inside, off 2d\nLH no, no block on inside; "
                 "block on inside, off 28d")
            .empty());
}
