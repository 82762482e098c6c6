#include "core/trade/routine_trim.hpp"

#include <doctest/doctest.h>

#include <set>
#include <string>

using namespace evenclaw;

namespace {

const Day calved{20000};

CowFacts milking() {
  CowFacts facts;
  facts.calved = calved;
  return facts;
}

CowFacts drying_off(Day on) {
  CowFacts facts = milking();
  facts.dry_off = on;
  return facts;
}

CowFacts calving(Day on, HeiferOrCow heifer_or_cow) {
  CowFacts facts;
  facts.due_to_calve = on;
  facts.heifer_or_cow = heifer_or_cow;
  return facts;
}

/// The slug of what is due, "" when nothing is.
std::string due_on(const CowFacts& facts, Day today, const std::vector<Day>& trims = {}) {
  const auto due = routine_trim_due(facts, trims, today);
  return due ? std::string(due->rule->slug) : std::string();
}

TurnRow turn_on(Day day, FootSet lifted, TurnEnd end = TurnEnd::done) {
  TurnRow turn;
  turn.turn = {uuid_derived(std::to_string(day.since_epoch))};
  turn.day = day;
  turn.lifted = lifted;
  turn.end = end;
  return turn;
}

}  // namespace

TEST_CASE("each routine trim has a name of its own, a source, and days in order") {
  std::set<std::string_view> slugs;
  for (const RoutineTrimRule& rule : all_routine_trim_rules()) {
    CAPTURE(rule.slug);
    slugs.insert(rule.slug);
    CHECK(rule.version >= 1);
    CHECK_FALSE(rule.source.empty());
    CHECK(rule.words.size() <= 60);
    CHECK(rule.from_days < rule.due_days);
    CHECK(rule.due_days < rule.overdue_days);
    CHECK(rule.overdue_days <= rule.until_days);
  }
  CHECK(slugs.size() == all_routine_trim_rules().size());
}

TEST_CASE("a cow of whom no calving and no drying off is known is never due") {
  CowFacts facts;
  facts.lactation = 3;
  facts.heifer_or_cow = HeiferOrCow::heifer;
  for (int day = 0; day < 800; day += 10) CHECK(due_on(facts, calved + day).empty());
}

TEST_CASE("a cow in milk is due from 60 days in milk, and late after 150") {
  const struct {
    int days_in_milk;
    const char* due;
    bool late;
  } table[] = {{0, "", false},           {59, "", false},
               {60, "milk-trim", false}, {150, "milk-trim", false},
               {151, "milk-trim", true}, {365, "milk-trim", true},
               {366, "", false}};

  for (const auto& row : table) {
    CAPTURE(row.days_in_milk);
    const Day today = calved + row.days_in_milk;
    CHECK(due_on(milking(), today) == row.due);
    const auto due = routine_trim_due(milking(), {}, today);
    if (due) CHECK((today >= due->overdue) == row.late);
  }
}

TEST_CASE("a trim in the window closes it, and one in the four weeks before") {
  const Day today = calved + 120;

  const struct {
    int trimmed_at;
    bool closes;
  } table[] = {{0, false}, {31, false}, {32, true},  {59, true},
               {60, true}, {120, true}, {121, false}};

  for (const auto& row : table) {
    CAPTURE(row.trimmed_at);
    CHECK(due_on(milking(), today, {calved + row.trimmed_at}).empty() == row.closes);
  }
}

TEST_CASE("before drying off she is due for a month, and late until two weeks before she calves") {
  const Day dry = calved + 300;
  CHECK(due_on(drying_off(dry), dry - 31, {calved + 70}).empty());
  CHECK(due_on(drying_off(dry), dry - 30, {calved + 70}) == "dry-off-trim");
  CHECK(due_on(drying_off(dry), dry, {calved + 70}) == "dry-off-trim");
  CHECK(due_on(drying_off(dry), dry, {calved + 70, dry - 3}).empty());
  CHECK(due_on(drying_off(dry), dry + 46, {calved + 70}) == "dry-off-trim");
  CHECK(due_on(drying_off(dry), dry + 47, {calved + 70}).empty());
}

TEST_CASE("the trim before drying off stands for the one in milk that was missed") {
  const Day dry = calved + 300;
  CHECK(due_on(drying_off(dry), dry - 31) == "milk-trim");
  CHECK(due_on(drying_off(dry), dry - 30) == "dry-off-trim");
  CHECK(due_on(drying_off(dry), dry, {dry - 3}).empty());
}

TEST_CASE("a drying off before she calved last is over") {
  CHECK(due_on(drying_off(calved - 60), calved + 10).empty());
  CHECK(due_on(drying_off(calved - 60), calved + 60) == "milk-trim");
}

TEST_CASE("a heifer is due four to two months before her first calving, a cow three to two") {
  const Day calves = calved + 400;
  const CowFacts heifer = calving(calves, HeiferOrCow::heifer);
  const CowFacts cow = calving(calves, HeiferOrCow::cow);
  CHECK(due_on(heifer, calves - 121).empty());
  CHECK(due_on(heifer, calves - 120) == "heifer-trim");
  CHECK(due_on(cow, calves - 91).empty());
  CHECK(due_on(cow, calves - 90) == "calving-trim");
  CHECK(due_on(heifer, calves - 60, {calves - 100}).empty());
}

TEST_CASE("in the two weeks before she calves no trim is asked for, whatever was missed") {
  const Day calves = calved + 340;
  CowFacts facts = milking();
  facts.due_to_calve = calves;
  CHECK(due_on(facts, calves - 14) == "calving-trim");
  CHECK(due_on(facts, calves - 13).empty());
  CHECK(due_on(facts, calves).empty());
}

TEST_CASE("a trim is a turn that was done with both hind feet lifted and not left untrimmed") {
  const FootSet hinds{Foot::lh, Foot::rh};
  const std::vector<TurnRow> turns = {turn_on(calved, hinds), turn_on(calved + 1, {Foot::lh}),
                                      turn_on(calved + 2, hinds, TurnEnd::not_done),
                                      turn_on(calved + 3, four_feet), turn_on(calved + 4, hinds)};
  FootRow left;
  left.turn = turns[4].turn;
  left.foot = Foot::rh;
  left.trimmed = Trimmed::no;
  CHECK(trims_of(turns, std::vector<FootRow>{left}) == std::vector<Day>{calved, calved + 3});
}
