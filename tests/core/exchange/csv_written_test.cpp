#include "core/exchange/csv_written.hpp"

#include <doctest/doctest.h>

#include <optional>

#include "core/exchange/csv.hpp"

namespace evenclaw {

namespace {

struct Kept {
  std::string cow;
  std::optional<std::int32_t> feet;
  std::string words;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("cow", &Kept::cow, "her number");
    visit("feet", &Kept::feet, "feet lifted");
    visit("words", &Kept::words, "free words");
  }
};

std::string cell_of(std::string text) {
  return csv_cell(Cell(std::move(text)));
}

}  // namespace

TEST_CASE("a list has the names of its columns first and a line for each row") {
  CHECK(csv_of(std::vector<Kept>{{"0412", 4, "kicks"}, {"513", std::nullopt, ""}}) ==
        "cow,feet,words\r\n0412,4,kicks\r\n513,,\r\n");
  CHECK(csv_of(std::vector<Kept>{}) == "cow,feet,words\r\n");
}

TEST_CASE("what a spreadsheet would run as a formula is made harmless") {
  const struct {
    const char* text;
    const char* cell;
  } rows[] = {{"=1+1", "'=1+1"},
              {"+49 30", "'+49 30"},
              {"-5", "'-5"},
              {"@SUM(A1)", "'@SUM(A1)"},
              {"\t=1", "\"'\t=1\""},
              {"\r=1", "\"'\r=1\""},
              {"\n=1", "\"'\n=1\""},
              {"=\"a\",b", "\"'=\"\"a\"\",b\""},
              {"a=b", "a=b"},
              {"412", "412"},
              {"", ""}};

  for (const auto& row : rows) CHECK_MESSAGE(cell_of(row.text) == row.cell, row.text);
  CHECK(csv_cell(Cell(std::int64_t{-5})) == "-5");
}

TEST_CASE("what holds a separator, a quote, a line end or a space at its end stands in quotes") {
  CHECK(cell_of("heel, bad") == "\"heel, bad\"");
  CHECK(cell_of("see; again") == "\"see; again\"");
  CHECK(cell_of("the \"crack\"") == "\"the \"\"crack\"\"\"");
  CHECK(cell_of("two\nlines") == "\"two\nlines\"");
  CHECK(cell_of(" far yard ") == "\" far yard \"");
}

TEST_CASE("what we write we read again") {
  const std::string text =
      csv_line({Cell(std::string("cow")), Cell(std::string("words"))}) +
      csv_line({Cell(std::string("412")), Cell(std::string("heel, \"bad\"; SU"))}) +
      csv_line({Cell(std::string("0413")), Cell(std::string("=1+1"))}) +
      csv_line({Cell(std::string("414")), Cell(std::string("two\nlines"))});
  const CsvTable table = csv_table(text);
  CHECK(table.faults.empty());
  REQUIRE(table.rows.size() == 3);
  CHECK(table.rows[0].cells == std::vector<std::string_view>{"412", "heel, \"bad\"; SU"});
  CHECK(table.rows[1].cells == std::vector<std::string_view>{"0413", "=1+1"});
  CHECK(table.rows[2].cells == std::vector<std::string_view>{"414", "two\nlines"});
}

}  // namespace evenclaw
