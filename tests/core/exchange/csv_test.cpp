#include "core/exchange/csv.hpp"

#include <doctest/doctest.h>

#include "core/base/random.hpp"
#include "core/base/text.hpp"

using namespace evenclaw;

namespace {

using CellTexts = std::vector<std::string>;

std::vector<CellTexts> rows_of(std::string_view text) {
  const CsvTable table = csv_table(text);
  REQUIRE(table.faults.empty());
  REQUIRE(table.row_faults.empty());
  std::vector<CellTexts> rows = {table.head};
  for (const CsvRow& row : table.rows) rows.emplace_back(row.cells.begin(), row.cells.end());
  return rows;
}

/// "3 message" of each fault.
CellTexts lines_told(const Faults& faults) {
  CellTexts told;
  for (const Fault& fault : faults) {
    CHECK(fault.slug == "list-unreadable");
    CHECK_FALSE(fault.remedy.empty());
    told.push_back(std::to_string(fault.line) + " " + fault.message);
  }
  return told;
}

}  // namespace

TEST_CASE("cells are parted by what most lines have: semicolons, tabs, bars or commas") {
  const std::vector<CellTexts> table = {{"cow", "breed"}, {"412", "Jersey"}};
  CHECK(rows_of("cow;breed\n412;Jersey") == table);
  CHECK(rows_of("cow\tbreed\n412\tJersey") == table);
  CHECK(rows_of("cow|breed\n412|Jersey\n") == table);
  CHECK(rows_of("cow,breed\n412,Jersey") == table);
  CHECK(rows_of("cow;breed\n412;Jersey, small")[1][1] == "Jersey, small");
  CHECK(rows_of("cow;kg\n412;612,5\n413;588,0")[1][1] == "612,5");
  CHECK(rows_of("cow\n412") == std::vector<CellTexts>{{"cow"}, {"412"}});
}

TEST_CASE("a title that a spreadsheet wrote with all its empty cells does no harm") {
  const std::vector<CellTexts> table = {{"cow", "breed", "calved"}, {"412", "", "2026-09-01"}};
  CHECK(rows_of("Home Farm;;\ncow;breed;calved\n412;;2026-09-01\n") == table);
  CHECK(rows_of("cow;\n412;\n") == std::vector<CellTexts>{{"cow"}, {"412"}});
}

TEST_CASE("a title above the head and the line that names the separator do no harm") {
  const std::vector<CellTexts> table = {{"cow", "breed"}, {"412", "Jersey"}, {"413", ""}};
  CHECK(rows_of("Cows of today\n\ncow;breed\n412;Jersey\n413;") == table);
  CHECK(rows_of("sep=;\ncow;breed\n412;Jersey\n413;") == table);
}

TEST_CASE("a cell in quotes may hold the separator, quotes and line ends") {
  CHECK(rows_of("cow,name\n412,\"Bella, the \"\"big\"\" one\"")[1][1] == R"(Bella, the "big" one)");
  CHECK(rows_of("\"cow\",\"name\"\n \"412\" , Bella ")[1] == CellTexts{"412", "Bella"});
  const CsvTable table = csv_table("cow;name\n412;\"Bella\nthe big one\"\n413;Anna");
  REQUIRE(table.rows.size() == 2);
  CHECK(table.rows[0].cells[1] == "Bella\nthe big one");
  CHECK(table.rows[1].line == 4);
}

TEST_CASE("leading zeros stay, also those a spreadsheet keeps by a formula") {
  CHECK(rows_of("cow;tag\n 0412 ;  ")[1] == CellTexts{"0412", ""});
  CHECK(rows_of("cow;tag\n=\"0412\";x")[1] == CellTexts{"0412", "x"});
}

TEST_CASE("a formula is text, and the apostrophe that guards it is left out again") {
  CHECK(rows_of("cow;name\n412;=cmd|'/c calc'!A0")[1][1] == "=cmd|'/c calc'!A0");
  CHECK(rows_of("cow;name\n412;'=1+1\n413;'s Anna")[1][1] == "=1+1");
  CHECK(rows_of("cow;name\n412;'=1+1\n413;'s Anna")[2][1] == "'s Anna");
}

TEST_CASE("line ends of either kind, empty lines and separators at the end do no harm") {
  CHECK(rows_of("cow;breed\r\n\r\n412;Jersey\r\n;\r\n") ==
        std::vector<CellTexts>{{"cow", "breed"}, {"412", "Jersey"}});
  CHECK(rows_of("cow;breed;\n412;Jersey;\n") ==
        std::vector<CellTexts>{{"cow", "breed"}, {"412", "Jersey"}});
}

TEST_CASE(
    "every line that cannot be read is told with its number and its words, the rest is read") {
  const CsvTable table =
      csv_table("cow;breed\n412\n413;\"Jersey\"x\n415;Jersey;x\n416;Jersey\n417;\"Jersey");
  CHECK(lines_told(table.row_faults) ==
        CellTexts{"2 the line has 1 cells and the head has 2: 412",
                  "3 something stands behind the end of a quote: \"Jersey\"x",
                  "4 the line has 3 cells and the head has 2: 415",
                  "6 a quote is not closed: \"Jersey"});
  REQUIRE(table.rows.size() == 1);
  CHECK(table.rows[0].line == 5);
}

TEST_CASE("a quote nobody closed takes no more than its own line away") {
  const CsvTable table = csv_table("cow;breed\n412;\"Jersey\n413;Jersey\n414;Jersey\n");
  CHECK(lines_told(table.row_faults) == CellTexts{"2 a quote is not closed: \"Jersey"});
  CHECK(table.rows.size() == 2);
}

TEST_CASE("a head names each column once, and there is one") {
  CHECK(lines_told(csv_table("cow;breed;Cow\n1;2;3").faults) ==
        CellTexts{"1 two columns are called \"Cow\""});
  CHECK(lines_told(csv_table("\n \n").faults) == CellTexts{"0 the list is empty"});
  CHECK(lines_told(csv_table("").faults) == CellTexts{"0 the list is empty"});
}

TEST_CASE("text of any kind is read or refused, and what is read has the form of the head") {
  constexpr std::string_view letters = "\"\",;;\t|\n\n 0412aB=\r";
  for (std::uint64_t stream = 0; stream < 4000; ++stream) {
    RandomStream random(20260901, stream);
    std::string text;
    const std::uint32_t length = random.below(50);
    for (std::uint32_t i = 0; i < length; ++i) {
      text += letters[random.below(static_cast<std::uint32_t>(letters.size()))];
    }
    CAPTURE(stream);
    const CsvTable table = csv_table(text);
    CHECK((table.head_line > 0 || !table.faults.empty()));
    for (const CsvRow& row : table.rows) {
      CHECK(row.cells.size() == table.head.size());
      CHECK(row.line > table.head_line);
      for (const std::string_view cell : row.cells) CHECK(is_utf8(cell));
    }
  }
}
