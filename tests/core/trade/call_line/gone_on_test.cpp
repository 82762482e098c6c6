#include "core/trade/call_line/gone_on.hpp"

#include <string>
#include <vector>

#include "tests/core/trade/call_line/saying.hpp"

using namespace evenclaw;

namespace {

using Lines = std::vector<std::string>;

Turn told(const Lines& lines) {
  return settled(saying::turn_of(lines), hind_feet);
}

std::string both(const Lines& before, const Lines& more) {
  const std::optional<Turn> turn = gone_on(told(before), told(more));
  return turn ? saying::joined(print_turn(*turn, english())) : "two turns";
}

struct Row {
  Lines before;
  Lines more;
  const char* turn;
};

void check(const std::vector<Row>& rows) {
  for (const Row& row : rows) {
    INFO(saying::joined(row.before), " | ", saying::joined(row.more));
    CHECK(both(row.before, row.more) == row.turn);
  }
}

}  // namespace

TEST_CASE("a finding called again with more detail is completed") {
  check(
      {{{"299 LH outside SU"},
        {"299 LH outside SU middle, bad"},
        "299 // LH outside sole ulcer middle of the sole, bad"},
       {{"361 RH DD behind"}, {"361 RH DD chronic"}, "361 // RH DD chronic behind"},
       {{"12 LH SU; DD raw"}, {"12 LH outside SU bad"}, "12 // LH outside sole ulcer, bad; DD raw"},
       {{"67 LH outside SU; block on"},
        {"67 LH block on inside"},
        "67 // LH outside sole ulcer; block on inside"},
       {{"52 lame"}, {"52 lame RH"}, "52 lame RH"},
       {{"52 fresh"}, {"52 lame RH"}, "52 fresh; lame RH"}});
}

TEST_CASE("a foot that was only named takes what was found, and one that stayed down is lifted") {
  check({{{"300 LH"}, {"300 LH nothing found"}, "300 // LH nothing found"},
         {{"300 LH; wrap on"}, {"300 LH DD raw"}, "300 // LH DD raw; wrap on"},
         {{"301 LH not lifted"}, {"301 LH DD raw"}, "301 // LH DD raw"}});
}

TEST_CASE("other feet and acts of a second call join the turn") {
  check({{{"12 LH SU"}, {"12 RH DD raw; spray"}, "12 // LH sole ulcer // RH DD raw; spray"},
         {{"12 LH SU"},
          {"12 vet; RH nothing found"},
          "12 vet // LH sole ulcer // RH nothing found"}});
}

TEST_CASE("an unfinished turn that is gone on with is finished, unless it breaks off again") {
  check({{{"302 LH SU", "unfinished, went down"},
          {"302 RH nothing found"},
          "302 // LH sole ulcer // RH nothing found"},
         {{"610 not done, no time"}, {"610 LH nothing found"}, "610 // LH nothing found"},
         {{"302 LH SU", "unfinished, went down"},
          {"302 unfinished, dark"},
          "302 unfinished, \"went down; dark\" // LH sole ulcer"}});
}

TEST_CASE("what contradicts is a turn of its own") {
  check({{{"12 LH SU"}, {"12 LH nothing found"}, "two turns"},
         {{"12 LH nothing found"}, {"12 LH SU"}, "two turns"},
         {{"12 LH outside SU"}, {"12 LH inside SU"}, "two turns"},
         {{"12 LH DD raw behind"}, {"12 LH DD chronic behind"}, "two turns"},
         {{"12 LH SU"}, {"12 LH DD raw"}, "two turns"},
         {{"12 LH SU"}, {"12 LH not lifted"}, "two turns"},
         {{"12 LH outside SU; inside SU"}, {"12 LH SU bad"}, "two turns"},
         {{"12 LH trimmed"}, {"12 LH not trimmed"}, "two turns"},
         {{"12 LH outside length 78 mm"}, {"12 LH outside length 70 mm"}, "two turns"}});
}
