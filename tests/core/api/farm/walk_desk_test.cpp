#include "core/api/farm/walk_desk.hpp"

#include <doctest/doctest.h>

#include "core/api/farm/farm_shown.hpp"
#include "tests/core/api/workplace.hpp"

namespace evenclaw::test {

namespace {

using Lines = std::vector<std::string>;

struct WalkedHerd {
  Workplace work;

  WalkDesk desk() {
    return WalkDesk::open(work.ports(), {work.herd(), day("2026-10-27"), {}}, english()).value();
  }

  Lines say(const Lines& lines) { return lines_of(desk().say_all(lines).value().items); }

  std::vector<FarmWalkRow> rows() { return walks_of(work.store, work.herd().herd).value(); }
};

}  // namespace

TEST_CASE("each measure is acknowledged, with what it is compared with and the source of that") {
  WalkedHerd herd;
  const Lines said = herd.say({"footbath 3 m by 50"});
  REQUIRE(said.size() == 4);
  CHECK(said[0] == "saved footbath length 3 m");
  CHECK(said[1] ==
        "told: footbath length, compare: 3.0 to 3.7 m (two dunks of each hind foot in 95 % at 3.0 "
        "m: Cook 2012, Vet J 193:669)");
  CHECK(said[2] == "saved footbath width 50 cm");
  CHECK(herd.rows().size() == 2);
}

TEST_CASE("the same lines given again record nothing twice") {
  WalkedHerd herd;
  const Lines lines = {"132 cows 120 cubicles", "grip not looked at"};
  herd.say(lines);
  CHECK(herd.say(lines) ==
        Lines{"there already cows", "there already cubicles", "there already grip"});
  CHECK(herd.rows().size() == 3);
}

TEST_CASE("a measure said in two ways is asked about, and the answer holds") {
  WalkedHerd herd;
  const Lines said = herd.say({"passage 3 m wide", "passage 3.2 m wide"});
  REQUIRE(said.size() == 4);
  CHECK(said[3].find("question: said twice: passage width 3 m, then passage width 3.2 m; which "
                     "holds?") == 0);
  herd.say({"no, passage 3.2 m wide"});
  REQUIRE(herd.rows().size() == 1);
  CHECK(herd.rows()[0].value == 3200);
}

TEST_CASE("each place has a walk of its own") {
  WalkedHerd herd;
  herd.say({"place old shed", "passage 2 m wide", "place new shed", "passage 4 m wide"});
  const auto rows = herd.rows();
  REQUIRE(rows.size() == 2);
  CHECK(rows[0].place == "new shed");
  CHECK(rows[0].value == 4000);
  CHECK_FALSE(rows[0].twice);
}

TEST_CASE("a line that is not understood is refused whole, the others are recorded") {
  WalkedHerd herd;
  const Lines said = herd.say({"footbath 3 long, 10 deep", "132 cows"});
  CHECK(said.at(0) == "refused line 1: \"3\" needs its unit; say \"3 m\"");
  REQUIRE(herd.rows().size() == 1);
  CHECK(herd.rows()[0].measure == WalkMeasure::cows);
}

TEST_CASE("at the end it is told what nothing was said of") {
  WalkedHerd herd;
  WalkDesk desk = herd.desk();
  (void)desk.say_all(Lines{"132 cows 120 cubicles", "grip not looked at"}).value();
  const Lines end = lines_of(desk.end().value().items);
  REQUIRE(end.size() == 1);
  CHECK(end[0].find("told: nothing was said of: cow weight; ") == 0);
  CHECK(end[0].find("grip") == std::string::npos);
}

}  // namespace evenclaw::test
