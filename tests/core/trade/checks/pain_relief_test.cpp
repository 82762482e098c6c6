#include <doctest/doctest.h>

#include "tests/core/trade/told_lines.hpp"

using namespace evenclaw;
using namespace evenclaw::told;

namespace {

const Names note_on_pain = {"note no-pain-relief-said LH"};

}  // namespace

TEST_CASE("a block for pain without talk of pain relief is noted") {
  CHECK(noted_on("412\nLH outside sole ulcer; block on inside") == note_on_pain);
  CHECK(noted_on("412 lame LH\nLH outside double sole plain; block on inside") == note_on_pain);
  CHECK(noted_on("412\nLH outside double sole plain; block on inside").empty());
}

TEST_CASE("two blocked feet of one cow are one note") {
  CHECK(noted_on("412\nLH outside sole ulcer; block on inside\nRH outside WLA; block on inside") ==
        note_on_pain);
}

TEST_CASE("asked for or given, pain relief was talked about") {
  CHECK(noted_on("412\nLH outside sole ulcer; block on inside; pain relief asked for").empty());
  CHECK(noted_on("412\nLH outside sole ulcer; block on inside; pain relief given by the vet")
            .empty());
}

TEST_CASE("so painful that no claw takes a block is noted too") {
  CHECK(noted_on("412\nLH outside sole ulcer; inside sole ulcer; vet") == note_on_pain);
}

TEST_CASE("a block still on, refitted or stacked is not noted again") {
  const std::string before = "412\nLH outside sole ulcer; block on inside\n---\n412\nLH ";
  for (const char* said : {"block still on", "block refitted", "block stacked"}) {
    CAPTURE(said);
    CHECK(noted_on(before + said + "; outside sole ulcer").empty());
  }
}

TEST_CASE("nothing is noted before all of her was said") {
  const ToldDay day = told_day("412\nLH outside sole ulcer; block on inside");
  CHECK(noted(day.draft.turn, {}, day.today, false).empty());
}
