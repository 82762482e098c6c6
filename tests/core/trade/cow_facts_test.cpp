#include "core/trade/cow_facts.hpp"

#include <doctest/doctest.h>

#include "core/trade/check.hpp"

namespace evenclaw::test {

namespace {

Day day(std::string_view text) {
  return day_from_text(text).value();
}

CowPast told_heifer_on(std::string_view text) {
  CowPast past;
  CowFactsRow row;
  row.breed = "Jersey";
  row.heifer_or_cow = HeiferOrCow::heifer;
  row.heifer_or_cow_on = day(text);
  past.rows.cow_facts.push_back(row);
  return past;
}

void came(CowPast& past, std::string_view on, Reason reason) {
  TurnRow turn;
  turn.day = day(on);
  turn.reason = reason;
  past.rows.turns.push_back(turn);
}

}  // namespace

TEST_CASE("of a cow of whom nothing was told nothing is known") {
  CHECK(facts_of(CowPast{}) == CowFacts{});
}

TEST_CASE("what was registered is known of her") {
  const CowFacts facts = facts_of(told_heifer_on("2026-03-01"));
  CHECK(facts.breed == "Jersey");
  CHECK(facts.heifer_or_cow == HeiferOrCow::heifer);
  CHECK_FALSE(facts.weight);
}

TEST_CASE("a heifer that comes fresh later is a cow, and one that came fresh before is not") {
  CowPast past = told_heifer_on("2026-03-01");
  came(past, "2026-02-01", Reason::fresh);
  CHECK(facts_of(past).heifer_or_cow == HeiferOrCow::heifer);
  came(past, "2026-06-01", Reason::fresh);
  CHECK(facts_of(past).heifer_or_cow == HeiferOrCow::cow);
}

TEST_CASE("a heifer that is to be dried off has calved") {
  CowPast past = told_heifer_on("2026-03-01");
  came(past, "2026-12-01", Reason::dry_off);
  CHECK(facts_of(past).heifer_or_cow == HeiferOrCow::cow);
}

TEST_CASE("one that was called a heifer is one, whoever registered her") {
  CowPast past;
  came(past, "2026-06-01", Reason::heifer);
  CHECK(facts_of(past).heifer_or_cow == HeiferOrCow::heifer);
  CHECK(facts_of(past).heifer_or_cow_on == day("2026-06-01"));
}

TEST_CASE("400 kg is where the weight classes part") {
  CHECK(weight_class_of(399) == WeightClass::under_400_kg);
  CHECK(weight_class_of(400) == WeightClass::from_400_kg);
}

TEST_CASE("a Jersey is small, a Holstein not, and an unknown breed is not guessed at") {
  CHECK(is_small_breed(" jersey"));
  CHECK_FALSE(is_small_breed("Holstein"));
  CHECK_FALSE(is_small_breed("Jersey cross"));
}

TEST_CASE("a heifer is one for a year after that was told, unless she was called a cow since") {
  CowPast past = told_heifer_on("2026-03-01");
  CHECK(is_heifer_on(facts_of(past), day("2027-03-01")));
  CHECK_FALSE(is_heifer_on(facts_of(past), day("2027-03-02")));
  CHECK_FALSE(is_heifer_on(CowFacts{}, day("2026-03-01")));
  came(past, "2026-06-01", Reason::fresh);
  CHECK_FALSE(is_heifer_on(facts_of(past), day("2026-06-02")));
}

TEST_CASE("a heifer that was told to have calved is a cow from that day on") {
  CowPast past = told_heifer_on("2026-03-01");
  past.rows.cow_facts.front().calved = day("2026-05-01");
  CHECK(facts_of(past).heifer_or_cow == HeiferOrCow::cow);
  CHECK(facts_of(past).heifer_or_cow_on == day("2026-05-01"));
  past.rows.cow_facts.front().calved = day("2026-02-01");
  CHECK(facts_of(past).heifer_or_cow == HeiferOrCow::heifer);
}

}  // namespace evenclaw::test
