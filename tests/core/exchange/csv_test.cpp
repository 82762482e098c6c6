#include "core/exchange/csv.hpp"

#include <doctest/doctest.h>

#include "core/base/random.hpp"
#include "core/base/text.hpp"

using namespace evenclaw;

namespace {

using Cells = std::vector<std::string>;

std::vector<Cells> rows_of(const std::vector<std::string>& lines) {
  const CsvTable table = csv_table(lines);
  REQUIRE(table.faults.empty());
  std::vector<Cells> rows = {table.head};
  for (const CsvRow& row : table.rows) rows.push_back(row.cells);
  return rows;
}

/// "3 message" of each fault.
Cells csv_faults(const std::vector<std::string>& lines) {
  Cells told;
  for (const Fault& fault : csv_table(lines).faults) {
    CHECK(fault.slug == "list-unreadable");
    CHECK_FALSE(fault.remedy.empty());
    told.push_back(std::to_string(fault.line) + " " + fault.message);
  }
  return told;
}

}  // namespace

TEST_CASE("cells are parted by what the head has: semicolons, tabs or commas") {
  const std::vector<Cells> table = {{"cow", "breed"}, {"412", "Jersey"}};
  CHECK(rows_of({"cow;breed", "412;Jersey"}) == table);
  CHECK(rows_of({"cow\tbreed", "412\tJersey"}) == table);
  CHECK(rows_of({"cow,breed", "412,Jersey"}) == table);
  CHECK(rows_of({"cow;breed", "412;Jersey, small"})[1][1] == "Jersey, small");
  CHECK(rows_of({"cow", "412"}) == std::vector<Cells>{{"cow"}, {"412"}});
}

TEST_CASE("a cell in quotes may hold the separator and quotes") {
  CHECK(rows_of({"cow,name", R"(412,"Bella, the ""big"" one")"})[1][1] ==
        R"(Bella, the "big" one)");
  CHECK(rows_of({R"("cow","name")", R"( "412" , Bella )"})[1] == Cells{"412", "Bella"});
}

TEST_CASE("leading zeros stay, and spaces at the ends do not") {
  CHECK(rows_of({"cow;tag", " 0412 ;  "})[1] == Cells{"0412", ""});
}

TEST_CASE("a mark at the beginning, line ends of either kind and empty lines do no harm") {
  const std::vector<Cells> rows =
      rows_of({"\xef\xbb\xbf"
               "cow;breed\r",
               "\r", "412;Jersey\r", ";"});
  CHECK(rows == std::vector<Cells>{{"cow", "breed"}, {"412", "Jersey"}});
}

TEST_CASE("every line that cannot be read is told with its number and its words") {
  CHECK(csv_faults({"cow;breed", "412", R"(413;"Jersey)", R"(414;"Jersey"x)", "415;Jersey;x",
                    "416;\xff", "417;Jersey"}) ==
        Cells{"2 the line has 1 cells and the head has 2: 412",
              "3 a quote is not closed in its line: \"Jersey",
              "4 something stands behind the end of a quote: \"Jersey\"x",
              "5 the line has 3 cells and the head has 2: 415",
              "6 these bytes are no text: 416;\xef\xbf\xbd"});
}

TEST_CASE("a head names each column once, and there is one") {
  CHECK(csv_faults({"cow;;Cow"}) ==
        Cells{"1 column 2 has no head", "1 two columns are called \"Cow\""});
  CHECK(csv_faults({"", " "}) == Cells{"0 the list is empty"});
}

TEST_CASE("bytes of any kind are read or refused, and what is read has the form of the head") {
  constexpr std::string_view letters = "\"\",;;\t 0412aB\xc3\xa4\xff\r\x01";
  for (std::uint64_t stream = 0; stream < 2000; ++stream) {
    RandomStream random(20260901, stream);
    std::vector<std::string> lines(1 + random.below(4));
    for (std::string& line : lines) {
      const std::uint32_t length = random.below(14);
      for (std::uint32_t i = 0; i < length; ++i) {
        line += letters[random.below(static_cast<std::uint32_t>(letters.size()))];
      }
    }
    CAPTURE(stream);
    const CsvTable table = csv_table(lines);
    CHECK((table.head_line > 0 || !table.faults.empty()));
    CHECK(table.rows.size() <= lines.size());
    for (const CsvRow& row : table.rows) {
      CHECK(row.cells.size() == table.head.size());
      CHECK(row.line > table.head_line);
      for (const std::string& cell : row.cells) CHECK(is_utf8(cell));
    }
  }
}
