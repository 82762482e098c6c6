#include "core/log/cow_identity.hpp"

#include <doctest/doctest.h>

#include "tests/core/log/farm.hpp"

namespace evenclaw {

namespace {

TurnRecorded turn_said(Farm& farm, std::string_view day_text, CowSaid said) {
  TurnRecorded body = farm.turn_body(cow_412, day_text, {nothing_found(Foot::lh)});
  body.turn.cow = std::move(said);
  return body;
}

const CowSaid star{CowKnown::unnumbered, "", {}, "white star"};
const CowSaid doubtful{CowKnown::doubtful, "513", {"531"}, ""};

}  // namespace

TEST_CASE("a number is hers without leading zeros, said as it was first given") {
  Farm farm;
  farm.write(CowRegistered{cow_412, "0412", day("2026-11-24")});
  farm.turn(cow_412, "2026-11-24", {});
  const Rows rows = farm.rows_of(cow_412);
  CHECK(rows.cows.at(0).number == "412");
  CHECK(rows.cows.at(0).number_said == "0412");
  REQUIRE(rows.cow_numbers.size() == 1);
  CHECK(rows.cow_numbers[0].number == "412");
  CHECK(rows.cow_numbers[0].valid_from == day("2026-11-24"));
  CHECK_FALSE(rows.cow_numbers[0].valid_to);
}

TEST_CASE("a replaced tag ends the old number the day before the new one begins") {
  Farm farm;
  farm.write(NumberGiven{cow_412, "77", day("2026-12-01")});
  farm.write(CowRegistered{cow_412, "412", day("2026-09-01")});
  const Rows rows = farm.rows_of(cow_412);
  REQUIRE(rows.cow_numbers.size() == 2);
  CHECK(rows.cow_numbers[0].number == "412");
  CHECK(rows.cow_numbers[0].valid_to == day("2026-11-30"));
  CHECK(rows.cow_numbers[1].number == "77");
  CHECK(rows.cows.at(0).number == "77");
}

TEST_CASE("a number registered on two tablets is one number from its first day") {
  Farm farm;
  farm.write(CowRegistered{cow_412, "412", day("2026-11-24")});
  farm.write_on("other tablet");
  farm.write(CowRegistered{cow_412, "0412", day("2026-12-22")});
  const Rows rows = farm.rows_of(cow_412);
  REQUIRE(rows.cow_numbers.size() == 1);
  CHECK(rows.cow_numbers[0].valid_from == day("2026-11-24"));
  CHECK_FALSE(rows.cow_numbers[0].valid_to);
}

TEST_CASE("a number that is told with its end is hers until that day and not hers now") {
  Farm farm;
  farm.write(CowRegistered{cow_412, "412", day("2026-09-01"), day("2026-09-30")});
  const Rows rows = farm.rows_of(cow_412);
  REQUIRE(rows.cow_numbers.size() == 1);
  CHECK(rows.cow_numbers[0].valid_to == day("2026-09-30"));
  CHECK(rows.cows.at(0).number.empty());
}

TEST_CASE("a number that ended of itself is not ended again by the next one") {
  Farm farm;
  farm.write(CowRegistered{cow_412, "412", day("2026-09-01"), day("2026-09-30")});
  farm.write(NumberGiven{cow_412, "77", day("2026-12-01")});
  const Rows rows = farm.rows_of(cow_412);
  REQUIRE(rows.cow_numbers.size() == 2);
  CHECK(rows.cow_numbers[0].valid_to == day("2026-09-30"));
  CHECK(rows.cow_numbers[1].number == "77");
}

TEST_CASE("a number that is told again with its end ends then") {
  Farm farm;
  farm.write(CowRegistered{cow_412, "412", day("2026-09-01")});
  farm.write(CowRegistered{cow_412, "0412", day("2026-10-01"), day("2026-10-31")});
  const Rows rows = farm.rows_of(cow_412);
  REQUIRE(rows.cow_numbers.size() == 1);
  CHECK(rows.cow_numbers[0].valid_from == day("2026-09-01"));
  CHECK(rows.cow_numbers[0].valid_to == day("2026-10-31"));
}

TEST_CASE("what is told of her without a number gives her none") {
  Farm farm;
  farm.write(CowRegistered{
      .cow = cow_412, .number = "", .valid_from = day("2026-09-01"), .breed = "Jersey"});
  CHECK(farm.rows_of(cow_412).cow_numbers.empty());
}

TEST_CASE("a number she gets back is hers twice") {
  Farm farm;
  farm.write(CowRegistered{cow_412, "412", day("2026-09-01")});
  farm.write(NumberGiven{cow_412, "77", day("2026-10-01")});
  farm.write(NumberGiven{cow_412, "412", day("2026-11-01")});
  CHECK(farm.rows_of(cow_412).cow_numbers.size() == 3);
}

TEST_CASE("of two numbers from the same day the one told last is hers") {
  Farm farm;
  farm.write(CowRegistered{cow_412, "412", day("2026-11-24")});
  farm.write(NumberGiven{cow_412, "421", day("2026-11-24")});
  const Rows rows = farm.rows_of(cow_412);
  REQUIRE(rows.cow_numbers.size() == 1);
  CHECK(rows.cows.at(0).number == "421");
}

TEST_CASE("a cow taken for two on one day keeps both numbers from then on") {
  Farm farm;
  farm.write(CowRegistered{cow_412, "412", day("2026-11-24")});
  farm.write(CowRegistered{cow_named("413"), "413", day("2026-11-24")});
  farm.write(SameCow{cow_412, cow_named("413")});
  Rows rows = farm.rows_of(cow_412);
  REQUIRE(rows.cow_numbers.size() == 2);
  for (const CowNumberRow& row : rows.cow_numbers) CHECK_FALSE(row.valid_to);
  CHECK(rows.cows.at(0).number == "413");
  farm.write(NumberGiven{cow_412, "412", day("2026-12-22")});
  rows = farm.rows_of(cow_412);
  REQUIRE(rows.cow_numbers.size() == 2);
  CHECK(rows.cows.at(0).number == "412");
  CHECK_FALSE(rows.cow_numbers[0].valid_to);
  CHECK(rows.cow_numbers[1].valid_to == day("2026-12-21"));
}

TEST_CASE("an unnumbered cow keeps her looks and gets her number when she is recognised") {
  Farm farm;
  farm.turn(turn_said(farm, "2026-11-24", star));
  CowRow row = farm.rows_of(cow_412).cows.at(0);
  CHECK(row.known == CowKnown::unnumbered);
  CHECK(row.number.empty());
  CHECK(row.looks == "white star");
  farm.write(NumberGiven{cow_412, "412", day("2026-11-24")});
  row = farm.rows_of(cow_412).cows.at(0);
  CHECK(row.known == CowKnown::numbered);
  CHECK(row.number == "412");
  CHECK(row.looks == "white star");
}

TEST_CASE("a doubtful cow stays doubtful until a turn or a person says her number") {
  Farm farm;
  farm.turn(turn_said(farm, "2026-11-24", doubtful));
  CHECK(farm.rows_of(cow_412).cows.at(0).known == CowKnown::doubtful);
  farm.turn(turn_said(farm, "2026-12-22", {CowKnown::numbered, "0531", {}, ""}));
  const CowRow row = farm.rows_of(cow_412).cows.at(0);
  CHECK(row.known == CowKnown::numbered);
  CHECK(row.number == "531");
  CHECK(row.number_said == "0531");
}

TEST_CASE("she was first and last seen on the days of her turns, not of turns not done") {
  Farm farm;
  farm.write(CowRegistered{cow_412, "412", day("2026-09-01")});
  farm.turn(cow_412, "2026-10-01", {nothing_found(Foot::lh)});
  farm.turn(cow_412, "2026-11-24", {nothing_found(Foot::lh)});
  TurnRecorded body = farm.turn_body(cow_412, "2026-12-22", {});
  body.turn.end = TurnEnd::not_done;
  farm.turn(body);
  const CowRow row = farm.rows_of(cow_412).cows.at(0);
  CHECK(row.first_seen == day("2026-10-01"));
  CHECK(row.last_seen == day("2026-11-24"));
}

TEST_CASE("a cow of whom only a number or news is known has the days of that") {
  Farm farm;
  farm.write(CowRegistered{cow_412, "412", day("2026-09-01")});
  TaskClosedBody told;
  told.cow = cow_412;
  told.day = day("2026-10-05");
  farm.write(told);
  const CowRow row = farm.rows_of(cow_412).cows.at(0);
  CHECK(row.known == CowKnown::numbered);
  CHECK(row.first_seen == day("2026-09-01"));
  CHECK(row.last_seen == day("2026-10-05"));
}

}  // namespace evenclaw
