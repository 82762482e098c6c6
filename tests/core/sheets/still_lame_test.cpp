#include "core/sheets/still_lame.hpp"

#include <doctest/doctest.h>

#include "core/sheets/stay_near.hpp"
#include "tests/core/sheets/invented_day.hpp"
#include "tests/core/sheets/sheet_text.hpp"

namespace evenclaw {

namespace {

/// A turn of that cow so many days ago.
TurnRow& turn_then(InventedDay& day, const std::string& number, int days_ago, FootSet lame) {
  TurnRow& turn = day.turn(number, Reason::lame, lame);
  turn.day = turn.day - days_ago;
  turn.visit = visit_id(turn.herd, turn.day, 1);
  return turn;
}

std::vector<StillLame> still_lame(InventedDay& day) {
  return lame_and_not_lifted(day.input().visit, day.rows().turns);
}

}  // namespace

TEST_CASE("a cow left lame at her last visit is known until she is in the crush again") {
  InventedDay day("Hollow Meadow");
  turn_then(day, "809", 7, {Foot::lf}).lifted = hind_feet;
  REQUIRE(still_lame(day).size() == 1);
  CHECK(still_lame(day)[0].feet == FootSet{Foot::lf});
  CHECK(still_lame(day)[0].on == day.input().visit.day - 7);
  turn_then(day, "809", 3, {Foot::lf}).lifted = four_feet;
  CHECK(still_lame(day).empty());
}

TEST_CASE("a cow whose lame foot was lifted, or that came today, is not among them") {
  InventedDay day("Hollow Meadow");
  turn_then(day, "12", 7, {Foot::lh}).lifted = hind_feet;
  turn_then(day, "15", 7, {}).lifted = hind_feet;
  turn_then(day, "18", 7, {Foot::lf});
  day.turn("18");
  turn_then(day, "21", -2, {Foot::lf});
  CHECK(still_lame(day).empty());
  turn_then(day, "24", 7, {});
  CHECK(still_lame(day).size() == 1);
}

TEST_CASE("a cow left lame before stays near, and the day is told") {
  InventedDay day("Hollow Meadow");
  day.known("809");
  day.input().still_lame.push_back(
      {day.id_of("809"), day.input().visit.day - 7, FootSet{Foot::lf}});
  CHECK(holds(text_of(stay_near(view_of(day.input(), english_wording()))),
              "809  came lame on left front, Tue 17 Nov, and was not lifted there then nor since"));
}

}  // namespace evenclaw
