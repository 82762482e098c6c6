#include <doctest/doctest.h>

#include <algorithm>
#include <string>

#include "tests/core/trade/call_line/saying.hpp"

using namespace evenclaw;

namespace {

std::vector<Suggestion> after(std::string_view half, bool cow_open = true) {
  return what_may_follow(half, saying::in_crush(cow_open), english());
}

bool offers(std::string_view half, std::string_view words) {
  const auto offered = after(half);
  return std::any_of(offered.begin(), offered.end(),
                     [words](const Suggestion& each) { return each.words == words; });
}

std::string meaning(std::string_view half, std::string_view words) {
  for (const Suggestion& each : after(half)) {
    if (each.words == words) return each.meaning;
  }
  return "not offered";
}

}  // namespace

TEST_CASE("feet come first behind a cow, lesions behind a claw, places behind a lesion") {
  CHECK(after("").front().words == "LF");
  CHECK(after("LH outside").front().words == "white line abscess");
  CHECK(after("LH outside white line abscess").front().words == "heel");
}

TEST_CASE("what cannot be is not offered") {
  CHECK_FALSE(offers("LH outside", "DD"));
  CHECK_FALSE(offers("LH outside", "raw"));
  CHECK_FALSE(offers("LH SU", "raw"));
  CHECK_FALSE(offers("LH SU", "between"));
  CHECK_FALSE(offers("LH DD", "heel"));
  CHECK(offers("LH DD", "raw"));
  CHECK_FALSE(offers("412", "wrap on"));
  CHECK_FALSE(offers("412 LH not lifted;", "block on"));
}

TEST_CASE("a block is offered for the good claw first") {
  const auto offered = after("LH outside SU; block on");
  CHECK(offered.front().words == "inside");
  CHECK(offered.front().meaning == "the good claw");
  CHECK(after("LH block on").front().meaning.empty());
}

TEST_CASE("places tell their zone, which depends on the lesion") {
  CHECK(meaning("LH SH", "heel") == "zone 6");
  CHECK(meaning("LH white line", "heel") == "zone 3");
  CHECK(meaning("LH SH", "outer wall").empty());
}

TEST_CASE("times tell their date") {
  CHECK(meaning("LH watch her walk", "14d") == "2026-12-09");
  CHECK(meaning("LH see again", "28d") == "2026-12-23");
  CHECK(meaning("LH wrap on, off", "Thu") == "2026-11-26");
  CHECK(meaning("LH wrap on, off", "Wed") == "2026-12-02");
}

TEST_CASE("the rest of a phrase that has begun is offered") {
  CHECK(after("LH outside white").front().words == "line abscess");
  CHECK(offers("LH wrap", "taken off"));
  CHECK(offers("told", "the farmer"));
}

TEST_CASE("without a cow only cows and the visit are offered") {
  for (const Suggestion& each : after("", false)) {
    CAPTURE(each.words);
    const Result<Line> line = read_line(each.words, saying::in_crush(false), english());
    const bool asks_for_more = !line.ok();
    CHECK((asks_for_more || each.words == "no number"));
  }
  CHECK_FALSE(offers("", "news"));
}

TEST_CASE("behind several numbers only news is offered") {
  const auto offered = after("412, 513");
  REQUIRE_FALSE(offered.empty());
  CHECK(offered.front().words == "gone");
  CHECK_FALSE(offers("412, 513", "sole ulcer"));
}

TEST_CASE("nothing is offered inside free words, comments, or behind what is not understood") {
  CHECK(after("412 note").empty());
  CHECK(after("no number, brown").size() > 0);
  CHECK(after("# x").empty());
  CHECK(after("LH qqqqqq").empty());
  CHECK(after(std::string(5000, 'x')).empty());
}

TEST_CASE("what is offered is explained in spoken words or by its code, never by an inner name") {
  for (const Suggestion& each : after("412 LH")) {
    CAPTURE(each.words);
    CHECK(each.meaning.find('_') == std::string::npos);
    CHECK(each.words.find('_') == std::string::npos);
  }
  CHECK(offers("412 LH", "foreign body"));
  CHECK(meaning("412 LH", "foreign body").empty());
  CHECK(meaning("412 LH", "sole ulcer") == "SU");
}

TEST_CASE("a joining word is offered between feet and numbers only") {
  CHECK(offers("412 LH", "and"));
  CHECK_FALSE(offers("", "and"));
  CHECK_FALSE(offers("412 LH SU", "and"));
}
