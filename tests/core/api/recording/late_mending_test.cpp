#include "core/api/recording/late_mending.hpp"

#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "tests/core/trade/call_line/saying.hpp"

using namespace evenclaw;

namespace {

std::optional<LateMending> read(const char* text) {
  const Result<Line> line = read_line(text, saying::in_crush(false), english());
  INFO(text);
  REQUIRE(line.ok());
  return late_mending(*line);
}

/// Each way, told by its foot.
std::string ways(const std::vector<std::string>& called, const char* text) {
  const Turn turn = settled(saying::turn_of(called), hind_feet);
  const std::optional<LateMending> mending = read(text);
  REQUIRE(mending);
  std::string all;
  for (const WayToMend& way : ways_to_mend(turn, *mending)) {
    all += (all.empty() ? "" : " | ") + (way.foot ? std::string(word_of(*way.foot)) : "cow") +
           ": " + saying::joined(print_turn(way.draft.turn, english()));
  }
  return all;
}

}  // namespace

TEST_CASE("her number and a correction mend an earlier turn, anything else calls her") {
  for (const char* text :
       {"412 no, right hind", "412 no, no sole ulcer", "412 no, chronic", "412 LH no, inside",
        "412 nothing after all", "412 no, not lame", "412 no, no 78 mm",
        "412 no, no DD; no, no wrap", "412 no, slight", "412? no, chronic", "412 no, wrap off 5d",
        "412 LH no, RH; spray", "412 no, chronic; LF nothing found", "412 no, no DD; LH SU"}) {
    CAPTURE(text);
    CHECK(read(text).has_value());
  }
  for (const char* text : {"412", "412 no, 421", "412 LH DD; no, chronic", "412 lame LH; no, RH",
                           "412 or 421 no, chronic", "412 LH", "412 nothing found", "412 wrap off",
                           "412 LH no, RH DD raw", "412 LH raw; spray"}) {
    CAPTURE(text);
    CHECK_FALSE(read(text).has_value());
  }
}

TEST_CASE("the foot that is meant is the one the correction fits") {
  const struct {
    std::vector<std::string> called;
    const char* said;
    const char* ways;
  } rows[] = {
      {{"412 LH DD raw", "rest fine"},
       "412 LH no, RH; spray",
       "LH: 412 rest fine // RH DD raw; spray"},
      {{"412 LH SU; RF nothing found"},
       "412 no, RH; block inside",
       "LH: 412 // RF nothing found // RH sole ulcer; block on inside"},
      {{"412 both hinds DD raw; both wrapped, off 3d"},
       "412 no, only LH",
       "LH: 412 // LH DD raw; wrap on, off 3d"},
      {{"412 LH DD; wrap 3d; RH DD; wrap 4d"},
       "412 no, wrap 5d",
       "LH: 412 // LH DD; wrap on, off 5d // RH DD; wrap on, off 4d | RH: 412 // LH DD; wrap on, "
       "off "
       "3d // RH DD; wrap on, off 5d"},
      {{"412 LH outside SU; block on inside", "rest fine"},
       "412 no, right hind",
       "LH: 412 rest fine // RH outside sole ulcer; block on inside"},
      {{"412 LH SU; RH DD raw"}, "412 no, chronic", "RH: 412 // LH sole ulcer // RH DD chronic"},
      {{"412 LH DD raw; RH DD raw"},
       "412 no, chronic",
       "LH: 412 // LH DD chronic // RH DD raw | RH: 412 // LH DD raw // RH DD chronic"},
      {{"412 LH DD raw; RH DD raw"}, "412 RH no, chronic", "RH: 412 // LH DD raw // RH DD chronic"},
      {{"412 LH DD raw; RH DD chronic"},
       "412 no, chronic",
       "LH: 412 // LH DD chronic // RH DD chronic"},
      {{"412 LH DD; RH DD"}, "412 no, only LH", "LH: 412 // LH DD"},
      {{"412 lame LH"}, "412 no, right hind", "cow: 412 lame RH"},
      {{"412 fresh; LH SU; RH DD"}, "412 no, not fresh", "LH: 412 // LH sole ulcer // RH DD"},
      {{"412 LH SU; vet; told the farmer"},
       "412 no, no told the farmer",
       "LH: 412 // LH sole ulcer; vet"},
      {{"412 LH SU", "rest fine"},
       "412 nothing after all",
       "LH: 412 rest fine // LH nothing found // RH nothing found"},
      {{"412 LH SU"}, "412 no, no DD", ""},
      {{"412 LH SU"}, "412 RH no, no SU", ""},
      {{"412 LH DD chronic"}, "412 no, chronic", ""},
      {{"412 nothing found"}, "412 no, right hind", ""},
  };

  for (const auto& row : rows) {
    CAPTURE(row.said);
    CHECK(ways(row.called, row.said) == row.ways);
  }
}

TEST_CASE("what could be said of a cow nobody has called yet is a call of its own") {
  for (const char* text : {"412 LH nothing after all", "412 LH no, right hind"}) {
    CAPTURE(text);
    CHECK(is_a_call_of_its_own(*read(text)));
  }
  for (const char* text : {"412 no, right hind", "412 nothing after all", "412 LH no, chronic",
                           "412 LH no, no SU", "412 no, not fresh", "412 LH no, inside"}) {
    CAPTURE(text);
    CHECK_FALSE(is_a_call_of_its_own(*read(text)));
  }
}

TEST_CASE("who stands there is corrected without her number") {
  const Result<Line> line = read_line("LH no, no block", saying::in_crush(true), english());
  REQUIRE(line.ok());
  CowSaid cow;
  cow.number = "412";
  const std::optional<LateMending> mending = mending_of(cow, *line);
  REQUIRE(mending);
  CHECK(mending->cow == cow);
  CHECK(mending->feet == FootSet{Foot::lh});
  CHECK(takes_back_only(*mending));
}

TEST_CASE("what is put right in another way is more than taken back") {
  const std::optional<LateMending> mending = read("412 no, no block; no, chronic");
  REQUIRE(mending);
  CHECK_FALSE(takes_back_only(*mending));
}

TEST_CASE("a time that may be of several things is tried with each of them") {
  const std::vector<std::string> called = {"412 LH DD raw; wrap on, off 3d; see again 14d"};
  CHECK(ways(called, "412 no, 5d") ==
        "LH: 412 // LH DD raw; wrap on, off 5d; see again 14d | "
        "LH: 412 // LH DD raw; wrap on, off 3d; see again 5d");
  CHECK(ways(called, "412 no, see again 5d") ==
        "LH: 412 // LH DD raw; wrap on, off 3d; see again 5d");
}
