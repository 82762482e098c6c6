#include "core/exchange/herd_line.hpp"

#include <doctest/doctest.h>

#include "tests/core/exchange/exchange_day.hpp"

using namespace evenclaw;
using evenclaw::test::day;

namespace {

/// The second line of the text, with all days year first.
ListLine line_of(std::string_view text) {
  const CsvTable table = csv_table(text);
  REQUIRE(table.rows.size() == 1);
  LineForm form{columns_read(table, {}, {}).value(), {}, day("2026-10-27")};
  form.styles.assign(form.columns.size(), DayStyle{});
  return herd_line(table.rows.front(), form);
}

HerdRecord record_of(std::string_view text) {
  ListLine line = line_of(text);
  for (const Fault& fault : line.faults) FAIL_CHECK(fault.message);
  return std::move(line.record);
}

/// "2:3 message" for line and column.
std::string first_fault(std::string_view text) {
  const ListLine line = line_of(text);
  REQUIRE_FALSE(line.faults.empty());
  const Fault& fault = line.faults.front();
  CHECK_FALSE(fault.remedy.empty());
  return std::to_string(fault.line) + ":" + std::to_string(fault.column) + " " + fault.message;
}

}  // namespace

TEST_CASE("a line of a list of cows tells who she is and what happened to her") {
  const HerdRecord cow = record_of(
      "number;tag;eid;name;breed;born;calved;lactation;dry off;due;weight\n"
      "0412;UK 123450 600001;826000000600001;Bella;Jersey;2022-01-05;2026-09-01;3,0;2027-06-20;"
      "2027-08-20;380,5 kg");
  CHECK(cow.number == "0412");
  CHECK(cow.tag == "UK 123450 600001");
  CHECK(cow.electronic == "826000000600001");
  CHECK(cow.name == "Bella");
  CHECK(cow.breed == "Jersey");
  CHECK(cow.born == day("2022-01-05"));
  CHECK(cow.events ==
        std::vector<LifeEventTold>{{LifeEvent::calved, day("2026-09-01"), std::int32_t{3}}});
  CHECK(cow.dry_off == day("2027-06-20"));
  CHECK(cow.due_to_calve == day("2027-08-20"));
  CHECK(cow.weight == WeightClass::under_400_kg);
  CHECK_FALSE(cow.is_one_event);
}

TEST_CASE("a drying off that lies behind is an event, one to come is a plan") {
  CHECK(record_of("cow;dry off\n412;2026-10-27").events.front().event == LifeEvent::dried_off);
  CHECK(record_of("cow;dry off\n412;2026-10-28").dry_off == day("2026-10-28"));
}

TEST_CASE("a line of a list of events is one event, with its lactation or its reason") {
  const HerdRecord calved = record_of("cow;event;day;lactation\n412;Kalbung;2026-09-01;2");
  CHECK(calved.is_one_event);
  CHECK(calved.events ==
        std::vector<LifeEventTold>{{LifeEvent::calved, day("2026-09-01"), std::int32_t{2}}});
  const HerdRecord sold = record_of("cow;event;day;reason\n412;sold;2026-09-01;lame");
  CHECK(sold.events ==
        std::vector<LifeEventTold>{{LifeEvent::left, day("2026-09-01"), std::nullopt,
                                    LeavingWay::sold, LeavingReason::feet_and_legs, "lame"}});
}

TEST_CASE("a lactation of 0 is a heifer, and one of which no calving is told is kept") {
  CHECK(record_of("cow;lactation\n412;0").heifer_or_cow == HeiferOrCow::heifer);
  CHECK(record_of("cow;lactation\n412;2").lactation == 2);
  CHECK(first_fault("cow;lactation;calved\n412;0;2026-09-01") ==
        "2:2 \"0\" under \"lactation\" is a heifer's, and she has calved");
}

TEST_CASE("a cell that does not hold what its column holds is told with line and column") {
  CHECK(first_fault("cow;calved\n412;soon") == "2:2 \"soon\" under \"calved\" is no day");
  CHECK(first_fault("cow;lactation\n412;2,5") ==
        "2:2 \"2,5\" under \"lactation\" is no number of a lactation");
  CHECK(first_fault("cow;heifer or cow\n412;bull") ==
        "2:2 \"bull\" under \"heifer or cow\" is no heifer and no cow");
  CHECK(first_fault("cow;weight\n412;heavy") == "2:2 \"heavy\" under \"weight\" is no weight");
  CHECK(first_fault("cow;eid\n412;12") == "2:2 \"12\" under \"eid\" is no electronic number");
  CHECK(first_fault("cow;event;day\n412;inseminated;2026-09-01") ==
        "2:2 \"inseminated\" under \"event\" is no event that is read");
  CHECK(first_fault("cow;event;day\n412;sold;") == "2:0 the event has no day");
  CHECK(first_fault("cow;tag\n412;UK 123456 600001").substr(0, 59) ==
        "2:2 \"UK 123456 600001\" under \"tag\" is no official ear tag: ");
  CHECK(first_fault("cow;born;calved\n412;2026-01-01;2025-01-01").substr(0, 4) == "2:3 ");
}

TEST_CASE("a formula is no number, and in a name it stays the text it is") {
  CHECK(first_fault("cow;breed\n=1+1;Jersey") == "2:1 \"=1+1\" under \"cow\" is no herd number");
  CHECK(first_fault("cow;breed\n412;=cmd") == "2:2 \"=cmd\" under \"breed\" is no breed");
  CHECK(record_of("cow;name\n412;=cmd|x").name == "=cmd|x");
}

TEST_CASE("a line end within a cell is a blank") {
  CHECK(record_of("cow;name\n412;\"Bella\nthe big\"").name == "Bella the big");
}
