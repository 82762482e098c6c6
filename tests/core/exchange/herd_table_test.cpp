#include "core/exchange/herd_table.hpp"

#include <doctest/doctest.h>

#include "core/base/random.hpp"

using namespace evenclaw;

namespace {

TableWish usual_wish() {
  TableWish wish;
  wish.today = day_from_text("2026-10-27").value();
  return wish;
}

HerdTable read(std::string_view text, const TableWish& wish = usual_wish()) {
  const CsvTable table = csv_table(text);
  auto herd = herd_table(table, wish);
  REQUIRE(herd.ok());
  return *std::move(herd);
}

/// "3:2 message" of each fault of a line.
std::vector<std::string> faults_in(std::string_view text) {
  std::vector<std::string> told;
  for (const Fault& fault : read(text).row_faults) {
    told.push_back(std::to_string(fault.line) + ":" + std::to_string(fault.column) + " " +
                   fault.message);
  }
  return told;
}

/// What is wrong with the table as a whole.
std::string refused(std::string_view text) {
  const CsvTable table = csv_table(text);
  const auto herd = herd_table(table, usual_wish());
  REQUIRE_FALSE(herd.ok());
  const Fault& fault = herd.faults().front();
  return std::to_string(fault.line) + ":" + std::to_string(fault.column) + " " + fault.message;
}

TableWish wish_with(std::string_view lesions) {
  TableWish wish = usual_wish();
  wish.findings = lesions_said(lesions).value();
  return wish;
}

}  // namespace

TEST_CASE("a bad line is told with its place, and the others are read") {
  const std::string_view text =
      "number;calved\n412;2026-09-01\n413;soon\n414\n415;2026-09-31\n416;\n";
  const HerdTable table = read(text);
  REQUIRE(table.records.size() == 2);
  CHECK(table.records[0].number == "412");
  CHECK(table.records[1].number == "416");
  CHECK(table.lines == 5);
  CHECK(faults_in(text) ==
        std::vector<std::string>{"3:2 \"soon\" under \"calved\" is no day",
                                 "4:2 the line has 1 cells and the head has 2: 414",
                                 "5:2 \"2026-09-31\" under \"calved\" is no day"});
}

TEST_CASE("days in three styles in one column are refused whole, with file line and column") {
  CHECK(
      refused("number;calved\n412;2026-09-01\n413;01.09.2026\n414;9/13/2026") ==
      "3:2 under \"calved\" the days are written in 3 styles: 2026-09-01 in line 2, 01.09.2026 in "
      "line 3, 9/13/2026 in line 4");
}

TEST_CASE("a column that leaves day and month open follows the others of its file") {
  const HerdTable table = read("number;born;calved\n412;13/01/2022;01/09/2026");
  CHECK(to_text(table.records.at(0).events.at(0).day) == "2026-09-01");
  CHECK(refused("number;calved\n412;01/09/2026") ==
        "2:2 under \"calved\" nothing tells whether the day or the month stands first in "
        "01/09/2026");
  TableWish wish = usual_wish();
  wish.dates = DayOrder::month_day_year;
  const HerdTable said = read("number;calved\n412;01/09/2026", wish);
  CHECK(to_text(said.records.at(0).events.at(0).day) == "2026-01-09");
  CHECK(said.day_styles == std::vector<std::string>{"calved: month first, as 12/31/2026"});
}

TEST_CASE("no two lines of a list of cows are of one cow, however her number is written") {
  CHECK(faults_in("number;tag\n412;UK 123450 600001\n0412;\n413;uk123450600001") ==
        std::vector<std::string>{"3:0 \"412\" stands in line 2 too",
                                 "4:0 \"UK123450600001\" stands in line 2 too"});
}

TEST_CASE("a number that was given to another cow after its carrier left may stand there twice") {
  const HerdTable table = read("number;left\n412;2025-03-01\n412;\n412;2024-01-01");
  CHECK(table.records.size() == 3);
  CHECK(faults_in("number;left\n412;2025-03-01\n412;2025-03-01").size() == 1);
}

TEST_CASE("a cow stands in a list of events as often as something happened to her") {
  CHECK(read("cow;event;date\n412;calved;2026-09-01\n412;dry;2026-06-01\n").records.size() == 2);
}

TEST_CASE("tables of any words are read or refused, and every record names a cow") {
  const std::vector<std::string> cells = {"412",
                                          "0412",
                                          "413",
                                          "UK 123450 600001",
                                          "826000000600001",
                                          "Jersey",
                                          "2026-09-01",
                                          "01.09.2026",
                                          "0",
                                          "3,0",
                                          "heifer",
                                          "",
                                          "\"x\"",
                                          "=1+1",
                                          "sold",
                                          "calved",
                                          "13/09/26"};
  const std::vector<std::string> heads = {"number", "tag", "eid",   "breed", "calved", "lactation",
                                          "left",   "?",   "event", "day",   "reason", "born"};
  for (std::uint64_t stream = 0; stream < 3000; ++stream) {
    RandomStream random(20261103, stream);
    std::string text;
    const auto add_line = [&](const std::vector<std::string>& words, std::uint32_t count) {
      for (std::uint32_t i = 0; i < count; ++i) {
        text += (i == 0 ? "" : ";") + words[random.below(static_cast<std::uint32_t>(words.size()))];
      }
      text += '\n';
    };
    const std::uint32_t columns = 1 + random.below(5);
    add_line(heads, columns);
    const std::uint32_t rows = random.below(5);
    for (std::uint32_t i = 0; i < rows; ++i) add_line(cells, columns);
    CAPTURE(stream);
    const CsvTable table = csv_table(text);
    const auto herd = herd_table(table, usual_wish());
    if (!herd) {
      CHECK_FALSE(herd.faults().empty());
      continue;
    }
    for (const HerdRecord& record : herd->records) {
      CHECK_FALSE((record.number.empty() && record.tag.empty() && record.electronic.empty()));
      CHECK((!record.is_one_event || record.events.size() == 1));
    }
  }
}

TEST_CASE("in a list of findings a line is one finding, and a cow may stand in several") {
  const HerdTable table =
      read("cow;date;leg;lesion\n412;2024-05-01;LH;SU\n412;2024-05-01;RH;DD\n413;2024-05-01;LF;\n",
           wish_with("icar"));
  REQUIRE(table.records.size() == 3);
  REQUIRE(table.records[0].finding);
  CHECK(table.records[0].finding->lesion == Lesion::su);
  CHECK(table.records[0].finding->day == day_from_text("2024-05-01"));
  CHECK(table.records[1].finding->foot == Foot::rh);
  CHECK_FALSE(table.records[2].finding);
  CHECK(table.records[2].passed_over_on == day_from_text("2024-05-01"));
  CHECK(table.passed_over == 1);
  CHECK(table.row_faults.empty());
}

TEST_CASE("lesions nobody explained are refused whole, with every word and how to say it") {
  const CsvTable table = csv_table(
      "cow;date;Befund\n1;2024-05-01;A\n2;2024-05-01;Klauenfäule\n3;2024-05-01;A\n4;;DD\n");
  const auto herd = herd_table(table, usual_wish());
  REQUIRE_FALSE(herd.ok());
  const Fault& fault = herd.faults().front();
  CHECK(fault.line == 1);
  CHECK(fault.column == 3);
  CHECK(fault.message ==
        "\"Befund\" holds lesions, and nobody said what its words mean: A (2), DD (1), "
        "Klauenfäule (1)");
  CHECK(fault.remedy.find("--lesions icar") != std::string::npos);
  CHECK(fault.remedy.find("--lesions \"A=...; DD=...; Klauenfäule=...\"") != std::string::npos);
  CHECK(fault.remedy.find("--columns \"ignore=Befund\"") != std::string::npos);
}

TEST_CASE("of very many words for lesions forty are told, the most frequent first") {
  std::string text = "cow;date;lesion\n412;2024-05-01;w59\n";
  for (int at = 0; at < 60; ++at) {
    text += "412;2024-05-01;w" + std::to_string(at) + "\n";
  }
  const std::string told = refused(text);
  CHECK(told.find("mean: w59 (2), w0 (1)") != std::string::npos);
  CHECK(told.find(" and 20 more") != std::string::npos);
}

TEST_CASE("a word for a lesion that nobody explained leaves its line out") {
  const CsvTable text = csv_table("cow;date;lesion\n412;2024-05-01;SU\n413;2024-05-01;A\n");
  const HerdTable table = herd_table(text, wish_with("icar")).value();
  CHECK(table.records.size() == 1);
  REQUIRE(table.row_faults.size() == 1);
  CHECK(table.row_faults[0].line == 3);
  CHECK(table.row_faults[0].column == 3);
  CHECK(table.row_faults[0].message == "\"A\" under \"lesion\" is no lesion that is known");
  CHECK(table.row_faults[0].remedy.find("--lesions \"A=CODE\"") != std::string::npos);
  REQUIRE(table.lesions.size() == 2);
  CHECK(table.lesions[0].means.empty());
  CHECK(table.lesions[1].means == "SU");
}

TEST_CASE("a finding without a day, or of a day to come, is left out") {
  const CsvTable text = csv_table("cow;date;lesion\n412;;SU\n413;2027-05-01;SU\n;2024-05-01;SU\n");
  const HerdTable table = herd_table(text, wish_with("icar")).value();
  CHECK(table.records.empty());
  REQUIRE(table.row_faults.size() == 3);
  CHECK(table.row_faults[0].message == "the finding has no day");
  CHECK(table.row_faults[1].slug == "date-in-future");
  CHECK(table.row_faults[2].message == "nothing tells which cow this is");
}
