#include <doctest/doctest.h>

#include "tests/core/trade/told_lines.hpp"

using namespace evenclaw;
using namespace evenclaw::told;

namespace {

const Names note_on_scab = {"note scab-without-treatment RH"};

}  // namespace

TEST_CASE("a scab on a foot that nobody treated here is noted") {
  CHECK(noted_on("412\nnothing found\n---\n412\nRH DD M3 behind") == note_on_scab);
  CHECK(noted_on("412\nLH DD raw behind; spray\n---\n412\nRH DD scab behind") == note_on_scab);
}

TEST_CASE("a spray or wrap within the last two months explains the scab") {
  CHECK(noted_on("412\nRH DD raw behind; spray\n---\n412\nRH DD M3 behind").empty());
  CHECK(noted_on("412\nRH DD raw behind; wrap on\n---\n412\nRH DD M3 behind; wrap off").empty());
  const ToldDay treated = told_day("412\nRH DD raw behind; spray");
  const ToldDay scab = told_day("412\nRH DD scab behind");
  for (const int days : {60, 61}) {
    CAPTURE(days);
    Past past;
    past.then(treated.draft.turn, scab.today - days);
    CHECK(noted(scab.draft.turn, past.known, scab.today) == (days == 60 ? Names{} : note_on_scab));
  }
}

TEST_CASE("of a cow that was never here no treatment is missing") {
  CHECK(noted_on("412\nRH DD M3 behind").empty());
}

TEST_CASE("other stages tell of no treatment") {
  CHECK(noted_on("412\nnothing found\n---\n412\nRH DD chronic behind").empty());
}
