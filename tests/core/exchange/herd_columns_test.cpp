#include "core/exchange/herd_columns.hpp"

#include <doctest/doctest.h>

using namespace evenclaw;

namespace {

/// "number by head, ignore by nothing", or what is wrong.
std::string read_as(std::string_view text, const std::vector<ColumnSaid>& said = {},
                    const std::vector<ColumnSaid>& remembered = {}) {
  const CsvTable table = csv_table(text);
  const auto columns = columns_read(table, said, remembered);
  std::string told;
  if (!columns) {
    for (const Fault& fault : columns.faults()) {
      CHECK_FALSE(fault.remedy.empty());
      told += (told.empty() ? "" : "; ") + fault.message;
    }
    return told;
  }
  for (const ColumnRead& column : *columns) {
    told += (told.empty() ? "" : ", ") + std::string(word_of(column.holds)) + " by " +
            std::string(word_of(column.known_by));
  }
  return told;
}

}  // namespace

TEST_CASE("columns are known by their heads in any order and spelling") {
  CHECK(read_as("Rasse;TierNr.;LETZTE_KALBUNG\nJersey;412;2026-09-01") ==
        "breed by head, number by head, calved by head");
}

TEST_CASE("ear tags and electronic numbers are known by what they are") {
  CHECK(read_as("A;B;C\n412;DE 03 12312345;276000312312345\n413;;") ==
        "ignore by nothing, tag by content, electronic by content");
  CHECK(read_as("number\n276000312312345") == "electronic by content");
}

TEST_CASE("short numbers that are all different are hers when nothing else tells the cow") {
  CHECK(read_as("A;B\n412;Jersey\n413;Jersey") == "number by content, ignore by nothing");
  CHECK(read_as("A;B\n412;3\n413;4").substr(0, 25) == "no column tells which cow");
}

TEST_CASE("what is said goes before what is remembered, and that before the head") {
  const std::vector<ColumnSaid> said = {{"tier", HerdColumn::number}};
  const std::vector<ColumnSaid> remembered = {{"Tier", HerdColumn::name},
                                              {"Milk", HerdColumn::lactation}};
  CHECK(read_as("Tier;Milk\n412;3", said, remembered) == "number by said, lactation by remembered");
}

TEST_CASE("a head somebody says and the file has not is told with the heads there are") {
  CHECK(read_as("Tier;Milk\n412;3", {{"Kuh", HerdColumn::number}, {"Tier", HerdColumn::number}}) ==
        "no column has the head \"Kuh\"");
}

TEST_CASE("two columns for one thing are told, and one of them can be left out") {
  CHECK(read_as("number;cow\n412;413") == "two columns are read as number: \"number\" and \"cow\"");
  CHECK(read_as("number;cow\n412;413", {{"cow", HerdColumn::ignore}}) ==
        "number by head, ignore by said");
}

TEST_CASE("an event needs its day, and a date without events is not read") {
  CHECK(read_as("cow;event\n412;sold") == "a column of events needs one with the day of each");
  CHECK(read_as("cow;date\n412;2026-09-01") == "number by head, ignore by nothing");
  CHECK(read_as("cow;event;date\n412;sold;2026-09-01") ==
        "number by head, event by head, day by head");
}

TEST_CASE("lesions with a day make a list of findings, and it tells of feet alone") {
  CHECK(read_as("Kuh;Datum;Bein;Befund;Grad;Rasse\n412;2024-05-01;HL;A;2;Jersey") ==
        "number by head, day by head, foot by head, lesion by head, degree by head, "
        "ignore by nothing");
  CHECK(read_as("cow;date;lesion;note;comment\n412;2024-05-01;A;x;y") ==
        "two columns are read as remark: \"note\" and \"comment\"");
}

TEST_CASE("a list of cows or of events stays one, whatever else it holds") {
  CHECK(read_as("cow;calved;diagnosis;note;comment\n412;2024-05-01;A;x;y") ==
        "number by head, calved by head, ignore by nothing, ignore by nothing, ignore by nothing");
  CHECK(read_as("cow;event;date;diagnosis\n412;sold;2024-05-01;A") ==
        "number by head, event by head, day by head, ignore by nothing");
}

TEST_CASE("somebody's word makes a list one of findings, and it needs the day of each") {
  const ColumnSaid lesions = {"X", HerdColumn::lesion};
  CHECK(read_as("cow;event;date;X\n412;sold;2024-05-01;A", {lesions}) ==
        "number by head, ignore by nothing, day by head, lesion by said");
  CHECK(read_as("cow;X\n412;A", {lesions}) == "a column of lesions needs one with the day of each");
  CHECK(read_as("cow;date;X\n412;2024-05-01;A", {}, {lesions}) ==
        "number by head, day by head, lesion by remembered");
}

TEST_CASE("what somebody says of two lists at once is told") {
  CHECK(read_as("cow;date;lesion;K\n412;2024-05-01;A;1", {{"K", HerdColumn::calved}}) ==
        "\"K\" is said to hold calved, and a list of findings tells of feet alone");
  CHECK(read_as("cow;K\n412;1", {{"K", HerdColumn::foot}}) ==
        "\"K\" is said to hold foot, and no column is one of lesions");
}

TEST_CASE("what a column holds is said by its head, and anything else is told with what to write") {
  const auto said = columns_said(" number=Tiernr , ignore = Milk (kg)");
  REQUIRE(said.ok());
  CHECK(*said ==
        std::vector<ColumnSaid>{{"Tiernr", HerdColumn::number}, {"Milk (kg)", HerdColumn::ignore}});
  CHECK(columns_said("nummer=Tiernr, number").faults().size() == 2);
  CHECK(columns_said("")->empty());
}
