#include "core/sheets/last_time.hpp"

#include <doctest/doctest.h>

#include "tests/core/sheets/invented_day.hpp"

namespace evenclaw {

namespace {

/// So many cows came for a reason, of them some with something found, on a day so long ago.
struct Told {
  int days_ago = 0;
  int cows = 0;
  int found = 0;
  Reason reason = Reason::routine;
  FootSet feet = hind_feet;
  int first_number = 100;
};

VisitSheetInput day_told(const Told& told) {
  InventedDay day("Hollow Meadow", told.feet);
  VisitRow& visit = day.input().visit;
  visit.day = visit.day - told.days_ago;
  visit.visit = visit_id(visit.herd, visit.day, 1);
  for (int cow = 0; cow < told.cows; ++cow) {
    day.turn(std::to_string(told.first_number + cow), told.reason);
    day.rest_fine();
    if (cow < told.found) day.found({Foot::lh, Claw::outside, Lesion::sh});
  }
  return day.input();
}

VisitSheetInput with_before(const Told& now, const Told& then) {
  VisitSheetInput input = day_told(now);
  const VisitSheetInput before = day_told(then);
  input.before = VisitBefore{before.visit, before.rows};
  return input;
}

AgainstLastTime told(const VisitSheetInput& input) {
  return against_last_time(view_of(input, english_wording()));
}

/// Which of the earlier days it is set beside: how many days ago; nothing for none.
std::optional<int> chosen(const Told& now, const std::vector<Told>& earlier) {
  const VisitSheetInput today = day_told(now);
  std::vector<VisitRow> visits = {today.visit};
  std::vector<TurnRow> turns = today.rows.turns;
  for (const Told& one : earlier) {
    const VisitSheetInput day = day_told(one);
    visits.push_back(day.visit);
    turns.insert(turns.end(), day.rows.turns.begin(), day.rows.turns.end());
  }
  const auto visit = last_comparable(today.visit, visits, turns);
  if (!visit) return std::nullopt;
  for (const VisitRow& row : visits) {
    if (row.visit == *visit) return today.visit.day - row.day;
  }
  return std::nullopt;
}

}  // namespace

TEST_CASE("fewer is said where the cows can show it, with both counts and how many fewer") {
  const AgainstLastTime words = told(with_before({0, 41, 12}, {56, 44, 30}));
  CHECK(words.sentence ==
        "Something was found on fewer cows than on Tue 29 Sep, the last day to compare with: 12 of "
        "41 today, 30 of 44 then (18 to 56 fewer of 100 cows).");
}

TEST_CASE("more is said the same way") {
  const AgainstLastTime words = told(with_before({0, 44, 30}, {56, 41, 12}));
  CHECK(words.sentence ==
        "Something was found on more cows than on Tue 29 Sep, the last day to compare with: 30 of "
        "44 today, 12 of 41 then (18 to 56 more of 100 cows).");
}

TEST_CASE("a difference that so many cows cannot show is none") {
  const AgainstLastTime words = told(with_before({0, 41, 24}, {56, 44, 30}));
  CHECK(words.sentence ==
        "On Tue 29 Sep, the last day to compare with, something was found on 30 of 44: no "
        "difference that 41 and 44 cows could show (29 fewer to 10 more of 100 cows would fit).");
}

TEST_CASE("how many cows are the same is told beside it") {
  const AgainstLastTime words =
      told(with_before({0, 41, 24}, {56, 44, 30, Reason::routine, hind_feet, 120}));
  CHECK(words.note.find("21 of the cows were lifted on both days") != std::string::npos);
}

TEST_CASE("without a day to set it beside nothing is said") {
  const AgainstLastTime words = told(day_told({0, 41, 24}));
  CHECK(words.sentence.empty());
  CHECK(words.note.empty());
}

TEST_CASE("days are compared only where the same feet were meant and most came for routine") {
  const struct {
    const char* name;
    Told now;
    std::vector<Told> earlier;
    std::optional<int> chosen;
  } rows[] = {
      {"alike", {0, 20, 5}, {{56, 20, 5}}, 56},
      {"the later of two", {0, 20, 5}, {{120, 20, 5}, {56, 20, 5}}, 56},
      {"lame cows between are passed over",
       {0, 20, 5},
       {{120, 20, 5}, {14, 20, 5, Reason::lame}},
       120},
      {"rechecks are no routine", {0, 20, 5}, {{14, 20, 5, Reason::recheck}}, std::nullopt},
      {"a reason nobody called is no routine",
       {0, 20, 5},
       {{14, 20, 5, Reason::not_called}},
       std::nullopt},
      {"drying off is", {0, 20, 5}, {{14, 20, 5, Reason::dry_off}}, 14},
      {"a lame-cow day is never compared", {0, 20, 5, Reason::lame}, {{56, 20, 5}}, std::nullopt},
      {"other feet", {0, 20, 5}, {{56, 20, 5, Reason::routine, four_feet}}, std::nullopt},
      {"too few then", {0, 20, 5}, {{56, 9, 5}}, std::nullopt},
      {"too few now", {0, 9, 5}, {{56, 20, 5}}, std::nullopt},
      {"just enough", {0, 10, 5}, {{56, 10, 5}}, 56},
      {"too long ago", {0, 20, 5}, {{401, 20, 5}}, std::nullopt},
      {"not yet too long", {0, 20, 5}, {{400, 20, 5}}, 400},
      {"no day before", {0, 20, 5}, {}, std::nullopt},
      {"a later day", {0, 20, 5}, {{-7, 20, 5}}, std::nullopt}};

  for (const auto& row : rows) {
    CHECK_MESSAGE(chosen(row.now, row.earlier) == row.chosen, row.name);
  }
}

TEST_CASE("four of five cows for routine work are enough, and one fewer is not") {
  for (const int lame : {4, 5}) {
    VisitSheetInput day = day_told({0, 20, 5});
    const VisitSheetInput before = day_told({56, 20, 5});
    for (int cow = 0; cow < lame; ++cow) {
      day.rows.turns[static_cast<std::size_t>(cow)].came_lame = true;
    }
    std::vector<TurnRow> turns = day.rows.turns;
    turns.insert(turns.end(), before.rows.turns.begin(), before.rows.turns.end());
    const std::vector<VisitRow> visits = {day.visit, before.visit};
    CHECK(last_comparable(day.visit, visits, turns).has_value() == (lame == 4));
  }
}

}  // namespace evenclaw
