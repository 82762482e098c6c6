#include "core/sheets/left_to_ask.hpp"

#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "core/sheets/stay_near.hpp"
#include "core/sheets/withdrawal_box.hpp"
#include "tests/core/sheets/invented_day.hpp"
#include "tests/core/sheets/sheet_text.hpp"

namespace evenclaw {

namespace {

/// Given to 513 so many days before this visit, at one of its own; she is not in the crush today.
ActionRow& given_before(InventedDay& day, const std::string& product, int days_ago) {
  day.turn("513");
  ActionRow& row = day.did({ActionKind::given, std::nullopt, Claw::none, product});
  day.rows().turns.pop_back();
  row.day = day.input().visit.day - days_ago;
  row.visit = visit_id(day.input().visit.herd, row.day, 1);
  return row;
}

std::size_t left_on(InventedDay& day) {
  return left_to_ask(view_of(day.input(), english_wording())).size();
}

}  // namespace

TEST_CASE("what was left open before is asked first, with the day it was given") {
  InventedDay day("Hollow Meadow");
  given_before(day, "mystery", 7);
  const std::string box = text_of(withdrawal_box(view_of(day.input(), english_wording())));
  CHECK_MESSAGE(holds(box, "513  Medicine given (mystery), on Tue 17 Nov."), box);
  const std::string near = text_of(stay_near(view_of(day.input(), english_wording())));
  CHECK_MESSAGE(holds(near, "ASK FIRST: no withdrawal was recorded"), near);
}

TEST_CASE("what is told at a later visit without a medicine answers all that was left open") {
  struct Case {
    ActionKind told;
    std::size_t left;
  };

  const Case rows[] = {{ActionKind::no_withdrawal, 0},
                       {ActionKind::withheld, 0},
                       {ActionKind::milk_withheld, 2},
                       {ActionKind::marked, 2}};
  for (const Case& row : rows) {
    InventedDay day("Hollow Meadow");
    given_before(day, "mystery", 7);
    given_before(day, "riddle", 6);
    day.turn("513");
    day.did({row.told});
    CHECK_MESSAGE(left_on(day) == row.left, word_of(row.told));
  }
}

TEST_CASE("what is told of today's medicine answers nothing that was given before") {
  InventedDay day("Hollow Meadow");
  given_before(day, "mystery", 7);
  day.turn("513");
  day.did({ActionKind::paste, Foot::lh, Claw::none, "tar"});
  day.did({ActionKind::no_withdrawal});
  CHECK(left_on(day) == 1);
}

TEST_CASE("of a cow who left is asked what whoever has her now must know") {
  const struct {
    const char* told;
    std::size_t of_nothing_known;
    std::size_t of_milk_not_known;
  } rows[] = {{"sold", 1, 1}, {"gone", 1, 1}, {"", 1, 1}, {"culled", 1, 0}, {"died", 0, 0}};

  for (const auto& row : rows) {
    for (const int days_ago : {1, 0}) {
      InventedDay day("Hollow Meadow");
      given_before(day, "mystery", 7);
      day.known("513").left_on = day.input().visit.day - days_ago;
      day.known("513").left_words = row.told;
      CHECK_MESSAGE(left_on(day) == row.of_nothing_known, row.told);
      day.rows().actions.clear();
      given_before(day, "mystery", 7);
      day.turn("513");
      day.did({ActionKind::meat_withheld});
      day.rows().turns.pop_back();
      std::size_t milk = 0;
      const VisitView view = view_of(day.input(), english_wording());
      for (const LeftToAsk& left : left_to_ask(view)) milk += left.half == HalfNotKnown::milk;
      CHECK_MESSAGE((milk > 0) == (row.of_milk_not_known > 0), row.told);
    }
  }
}

TEST_CASE("milk told alone leaves her meat to be asked of until somebody tells it") {
  InventedDay day("Hollow Meadow");
  day.turn("513");
  day.did({ActionKind::milk_withheld, std::nullopt, Claw::none, "", 2});
  CHECK(left_on(day) == 1);
  const std::string near = text_of(stay_near(view_of(day.input(), english_wording())));
  CHECK_MESSAGE(holds(near, "meat withdrawal not known"), near);
  day.did({ActionKind::meat_withheld, std::nullopt, Claw::none, "", 2});
  CHECK(left_on(day) == 0);
}

TEST_CASE("of earlier visits there stay whole ones, and of cows to be asked of what was given") {
  InventedDay day("Hollow Meadow");
  given_before(day, "mystery", 7);
  day.turn("77");
  day.did({ActionKind::opened, Foot::lh}).visit = visit_id(day.input().visit.herd, Day{}, 1);
  std::vector<ActionRow> earlier = day.rows().actions;
  keep_what_may_be_asked(earlier, {}, day.input().visit.day);
  REQUIRE(earlier.size() == 1);
  CHECK(earlier.front().product == "mystery");
  earlier = day.rows().actions;
  keep_what_may_be_asked(earlier, {earlier.back().visit}, day.input().visit.day);
  CHECK(earlier.size() == 2);
}

}  // namespace evenclaw
