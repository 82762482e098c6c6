#include "core/exchange/record_faults.hpp"

#include <doctest/doctest.h>

#include "tests/core/exchange/exchange_day.hpp"

using namespace evenclaw;
using evenclaw::test::day;

namespace {

std::string faults_told(const HerdRecord& record) {
  std::string told;
  for (const RecordFault& found : faults_of_record(record, day("2026-10-27"))) {
    CHECK_FALSE(found.fault.remedy.empty());
    told += (told.empty() ? "" : "; ") + std::string(word_of(found.column)) + ": " +
            found.fault.message;
  }
  return told;
}

HerdRecord cow_that(std::vector<LifeEventTold> events) {
  HerdRecord record;
  record.number = "412";
  record.events = std::move(events);
  return record;
}

}  // namespace

TEST_CASE("what can be true has no fault") {
  HerdRecord record = cow_that({{LifeEvent::arrived, day("2024-01-01")},
                                {LifeEvent::calved, day("2024-09-01")},
                                {LifeEvent::dried_off, day("2025-06-01")},
                                {LifeEvent::left, day("2025-08-01")}});
  record.born = day("2022-01-05");
  CHECK(faults_told(record).empty());
}

TEST_CASE("a cow that calves before her birth or as a calf is told") {
  HerdRecord record = cow_that({{LifeEvent::calved, day("2021-09-01")}});
  record.born = day("2022-01-05");
  CHECK(faults_told(record) ==
        "calved: she calved on 2021-09-01, before she was born on 2022-01-05");
  record.events.front().day = day("2022-12-05");
  CHECK(faults_told(record) ==
        "calved: she calved on 2022-12-05, less than a year after she was born on 2022-01-05");
}

TEST_CASE("a calved heifer, a day to come and a calving after she left are told") {
  HerdRecord heifer = cow_that({{LifeEvent::calved, day("2026-09-01")}});
  heifer.heifer_or_cow = HeiferOrCow::heifer;
  CHECK(faults_told(heifer) == "calved: she calved on 2026-09-01 and is said to be a heifer");
  CHECK(faults_told(cow_that({{LifeEvent::left, day("2026-10-28")}})) ==
        "left: 2026-10-28 is after the day from which the list holds, 2026-10-27, and it is told "
        "that she left");
  CHECK(faults_told(cow_that(
            {{LifeEvent::calved, day("2026-09-01")}, {LifeEvent::left, day("2026-08-01")}})) ==
        "calved: she calved on 2026-09-01, after she left on 2026-08-01");
}

TEST_CASE("a cow that nothing identifies is told, and an event is told under its day") {
  CHECK(faults_told({}) == "number: nothing tells which cow this is");
  HerdRecord event = cow_that({{LifeEvent::calved, day("2027-09-01")}});
  event.is_one_event = true;
  CHECK(faults_told(event).substr(0, 4) == "day:");
}
