#include "core/trade/after_leaving.hpp"

#include <doctest/doctest.h>

#include "core/trade/follow_up_rules.hpp"

namespace evenclaw {

namespace {

Day day(int nth) {
  return *day_from_text("2026-11-01") + nth;
}

TaskRow end_of(const FollowUpRule& rule) {
  TaskRow task;
  task.kind = rule.kind;
  task.rule = rule.slug;
  task.due = day(9);
  task.overdue = day(10);
  task.words = "last day meat held back: Tue 10 Nov";
  return task;
}

CowRow told_gone(std::string_view words) {
  CowRow cow;
  cow.left_on = day(1);
  cow.left_words = words;
  return cow;
}

}  // namespace

TEST_CASE("how she left is read from the words in which it was told, in either language") {
  const struct {
    const char* words;
    LeavingWay way;
  } rows[] = {{"321 sold", LeavingWay::sold},
              {"sold, lame", LeavingWay::sold},
              {"321 verkauft", LeavingWay::sold},
              {"culled", LeavingWay::slaughtered},
              {"Schlachthof", LeavingWay::slaughtered},
              {"321 geschlachtet", LeavingWay::slaughtered},
              {"321 died", LeavingWay::died},
              {"put down", LeavingWay::died},
              {"321 tot", LeavingWay::died},
              {"gone", LeavingWay::not_told},
              {"", LeavingWay::not_told},
              {"moved to Far Farm", LeavingWay::not_told},
              {"sold, low yield", LeavingWay::sold},
              {"Klauen/geschlachtet", LeavingWay::slaughtered},
              {"lame", LeavingWay::not_told},
              {"306 sold, 307 died", LeavingWay::not_told}};

  for (const auto& row : rows) CHECK_MESSAGE(way_left(row.words) == row.way, row.words);
}

TEST_CASE("milk ends with a cow that is slaughtered, meat only with one that died") {
  const struct {
    const char* words;
    bool milk;
    bool meat;
  } rows[] = {
      {"sold", true, true}, {"gone", true, true}, {"culled", false, true}, {"died", false, false}};

  for (const auto& row : rows) {
    CAPTURE(row.words);
    const CowRow cow = told_gone(row.words);
    CHECK(holds_after_leaving(end_of(milk_withdrawal_rule), cow, day(9)) == row.milk);
    CHECK(holds_after_leaving(end_of(meat_withdrawal_rule), cow, day(9)) == row.meat);
  }
}

TEST_CASE("once it is over, and of any other task, nobody has to know") {
  const CowRow sold = told_gone("sold");
  CHECK_FALSE(holds_after_leaving(end_of(meat_withdrawal_rule), sold, day(10)));
  CHECK_FALSE(holds_after_leaving(end_of(wrap_off_rule), sold, day(2)));
  CHECK(ends_when_she_leaves(end_of(wrap_off_rule)));
  CHECK_FALSE(ends_when_she_leaves(end_of(milk_withdrawal_rule)));
}

TEST_CASE("that she left is told with the end") {
  CHECK(words_after_leaving(end_of(meat_withdrawal_rule), told_gone("sold")) ==
        "last day meat held back: Tue 10 Nov; left the herd Mon 2 Nov");
}

}  // namespace evenclaw
