#include "core/log/cow_life.hpp"

#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "tests/core/log/farm.hpp"

namespace evenclaw {

namespace {

LifeTold life(std::vector<LifeEventTold> events) {
  LifeTold body;
  body.cow = cow_412;
  body.events = std::move(events);
  return body;
}

LifeEventTold happened(LifeEvent event, std::string_view on,
                       std::optional<std::int32_t> lactation = std::nullopt) {
  return {event, day(on), lactation};
}

/// "2026-09-01 calved 3".
std::vector<std::string> lives(const Farm& farm) {
  std::vector<std::string> told;
  for (const CowLifeRow& row : farm.rows_of(cow_412).cow_life) {
    told.push_back(to_text(row.day) + ' ' + std::string(word_of(row.event)) +
                   (row.lactation ? ' ' + std::to_string(*row.lactation) : std::string()));
  }
  return told;
}

CowFactsRow facts(const Farm& farm) {
  const Rows rows = farm.rows_of(cow_412);
  REQUIRE(rows.cow_facts.size() == 1);
  return rows.cow_facts.front();
}

}  // namespace

TEST_CASE("each event is a row by day, and one that is told again is the same") {
  Farm farm;
  farm.write(life(
      {happened(LifeEvent::calved, "2026-09-01"), happened(LifeEvent::dried_off, "2026-07-01")}));
  farm.write(life({happened(LifeEvent::calved, "2026-09-01", 3)}));
  CHECK(lives(farm) == std::vector<std::string>{"2026-07-01 dried_off", "2026-09-01 calved 3"});
}

TEST_CASE("an event said not to have happened is out until it is told again") {
  Farm farm;
  farm.write(life({happened(LifeEvent::calved, "2026-09-01")}));
  LifeTold mended = life({happened(LifeEvent::calved, "2026-09-02")});
  mended.not_so = {{LifeEvent::calved, day("2026-09-01")}};
  farm.write(mended);
  CHECK(lives(farm) == std::vector<std::string>{"2026-09-02 calved"});
  farm.write(life({happened(LifeEvent::calved, "2026-09-01")}));
  CHECK(lives(farm).size() == 2);
}

TEST_CASE("the row says which file told it first") {
  Farm farm;
  LifeTold body = life({happened(LifeEvent::calved, "2026-09-01")});
  body.source = sha256("a file");
  farm.write(body);
  body.source = sha256("another");
  farm.write(body);
  CHECK(farm.rows_of(cow_412).cow_life.at(0).source == to_text(sha256("a file")));
}

TEST_CASE("her last calving takes the place of the one that was registered, with its lactation") {
  Farm farm;
  CowRegistered told{cow_412, "412", day("2025-09-10")};
  told.calved = day("2025-09-01");
  told.lactation = 2;
  told.dry_off = day("2026-07-01");
  told.due_to_calve = day("2026-08-28");
  farm.write(told);
  farm.write(life({happened(LifeEvent::calved, "2026-09-01", 3)}));
  CHECK(facts(farm).calved == day("2026-09-01"));
  CHECK(facts(farm).lactation == 3);
  CHECK_FALSE(facts(farm).dry_off);
  CHECK_FALSE(facts(farm).due_to_calve);
}

TEST_CASE("no lactation is worked out from the one before") {
  Farm farm;
  CowRegistered told{cow_412, "412", day("2025-09-10")};
  told.lactation = 2;
  farm.write(told);
  farm.write(life({happened(LifeEvent::calved, "2026-09-01")}));
  CHECK_FALSE(facts(farm).lactation);
  told.valid_from = day("2026-10-01");
  told.lactation = 3;
  farm.write(told);
  CHECK(facts(farm).lactation == 3);
}

TEST_CASE("an earlier calving changes nothing of what is known of her now") {
  Farm farm;
  CowRegistered told{cow_412, "412", day("2026-09-10")};
  told.calved = day("2026-09-01");
  told.lactation = 3;
  farm.write(told);
  farm.write(life({happened(LifeEvent::calved, "2025-08-01", 2)}));
  CHECK(facts(farm).calved == day("2026-09-01"));
  CHECK(facts(farm).lactation == 3);
}

TEST_CASE("she is dried off on the day it happened, not on the day it was planned") {
  Farm farm;
  CowRegistered told{cow_412, "412", day("2025-09-10")};
  told.calved = day("2025-09-01");
  told.dry_off = day("2026-07-01");
  farm.write(told);
  farm.write(life({happened(LifeEvent::dried_off, "2026-06-20")}));
  CHECK(facts(farm).dry_off == day("2026-06-20"));
}

TEST_CASE("a cow that left is gone with the words of the list, and her tasks are closed") {
  Farm farm;
  LifeTold body = life({{LifeEvent::left, day("2026-10-01"), std::nullopt, LeavingWay::sold,
                         LeavingReason::feet_and_legs, "lame"}});
  farm.write(CowRegistered{cow_412, "412", day("2025-01-01")});
  farm.write(body);
  CHECK(farm.rows_of(cow_412).cows.front().left_on == day("2026-10-01"));
  CHECK(farm.rows_of(cow_412).cows.front().left_words == "lame");
}

TEST_CASE("a cow in the crush after the day she is said to have left is here") {
  Farm farm;
  farm.write(life({happened(LifeEvent::left, "2026-10-01")}));
  farm.turn(cow_412, "2026-11-24", {nothing_found(Foot::lh)});
  CHECK_FALSE(farm.rows_of(cow_412).cows.front().left_on);
}

TEST_CASE("a cow that arrived again after she left is here") {
  Farm farm;
  farm.write(CowRegistered{cow_412, "412", day("2025-01-01")});
  farm.write(
      life({happened(LifeEvent::left, "2026-10-01"), happened(LifeEvent::arrived, "2026-11-01")}));
  CHECK_FALSE(farm.rows_of(cow_412).cows.front().left_on);
}

}  // namespace evenclaw
