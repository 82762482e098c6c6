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
