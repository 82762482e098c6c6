#include "core/api/recording/foot_in_doubt.hpp"

#include <doctest/doctest.h>

#include <string>

#include "core/api/recording/refused_of_her.hpp"
#include "tests/core/trade/call_line/saying.hpp"

using namespace evenclaw;

namespace {

void take(InCrush& cow, const std::string& text) {
  bool cow_open = true;
  REQUIRE(saying::say(cow.draft, cow_open, text).empty());
  cow.draft.words.push_back(text);
}

InCrush behind_right_hind() {
  InCrush cow;
  take(cow, "501 RH DD raw");
  return cow;
}

bool is_refused(const InCrush& cow, const std::string& text) {
  const auto line = read_line(text, saying::in_crush(), english());
  REQUIRE(line);
  return why_foot_is_in_doubt(cow, *line, text, english()).has_value();
}

}  // namespace

TEST_CASE("a refused line that named another foot puts the foot spoken of in doubt") {
  for (const char* refused : {"LH outsde SU", "LHH", "SU LH", "wrap LH", "nothing LH",
                              "LH has a SU", "left hind outsde SU"}) {
    CAPTURE(refused);
    InCrush cow = behind_right_hind();
    keep_refused(cow, refused, english());
    CHECK(feet_in_doubt(cow, english()) == FootSet{Foot::lh});
    CHECK(is_refused(cow, "block inside"));
    CHECK(is_refused(cow, "no, inside"));
    CHECK(is_refused(cow, "501 nothing found"));
    CHECK_FALSE(is_refused(cow, "LH block inside"));
    CHECK_FALSE(is_refused(cow, "rest fine"));
    CHECK_FALSE(is_refused(cow, "kicks"));
    CHECK_FALSE(is_refused(cow, "502 LH SU"));
  }
}

TEST_CASE("a slip of the same foot, or in words without a foot, leaves no doubt") {
  for (const char* refused : {"RH outsde SU", "outsde SU", "wrap RH", "lame LHH"}) {
    CAPTURE(refused);
    InCrush cow = behind_right_hind();
    keep_refused(cow, refused, english());
    CHECK(feet_in_doubt(cow, english()).empty());
  }
}

TEST_CASE("once a foot is named it is that one again") {
  InCrush cow = behind_right_hind();
  keep_refused(cow, "LH outsde SU", english());
  take(cow, "kicks");
  CHECK(is_refused(cow, "block inside"));
  take(cow, "LH outside SU");
  CHECK_FALSE(is_refused(cow, "block inside"));
}

TEST_CASE("what is refused for the doubt is of the foot that was named") {
  InCrush cow = behind_right_hind();
  keep_refused(cow, "LH outsde SU", english());
  keep_refused(cow, "block inside", english());
  CHECK(cow.refused.back().spoken_of == FootSet{Foot::lh});
}
