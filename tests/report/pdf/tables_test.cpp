#include <doctest/doctest.h>

#include <algorithm>
#include <string>

#include "report/pdf/block_strips.hpp"
#include "report/pdf/pages.hpp"
#include "tests/report/pdf/shipped_fonts.hpp"

namespace evenclaw {
namespace {

Table table_of(int rows) {
  Table table;
  table.caption = "Nothing found";
  table.columns = {{"Cow"}, {"Days", Align::end}, {"Feet"}};
  for (int row = 0; row < rows; ++row) {
    table.rows.push_back({{plain(std::to_string(100 + row))}, {plain("7")}, {plain("all four")}});
  }
  return table;
}

std::vector<Page> laid(const Table& table) {
  Typesetter typesetter = test::typesetter();
  return dealt_to_pages(table_strips(table, typesetter));
}

}  // namespace

TEST_CASE("The caption stands once, the heads on every page of the table") {
  const std::vector<Page> pages = laid(table_of(60));
  REQUIRE(pages.size() == 2);
  const auto first = test::lines_on(pages[0].pieces);
  const auto second = test::lines_on(pages[1].pieces);
  CHECK(std::vector(first.begin(), first.begin() + 4) ==
        std::vector<std::string>{"Nothing found", "Cow", "Days", "Feet"});
  CHECK(std::vector(second.begin(), second.begin() + 3) ==
        std::vector<std::string>{"Cow", "Days", "Feet"});
}

TEST_CASE("No page holds the last row of a table alone") {
  for (int rows = 30; rows < 90; ++rows) {
    const std::vector<Page> pages = laid(table_of(rows));
    const auto lines = test::lines_on(pages.back().pieces);
    const std::string before_last = std::to_string(100 + rows - 2);
    CHECK(std::find(lines.begin(), lines.end(), before_last) != lines.end());
  }
}

TEST_CASE("No page holds the first row of a table alone below its heads") {
  for (int lines = 30; lines < 60; ++lines) {
    Typesetter typesetter = test::typesetter();
    Strips strips;
    for (int line = 0; line < lines; ++line) {
      strips =
          below(std::move(strips), paragraph_strips({{plain("what stands above")}}, typesetter));
    }
    for (const Page& page : dealt_to_pages(below(strips, table_strips(table_of(6), typesetter)))) {
      const auto told = test::lines_on(page.pieces);
      const auto holds = [&](const char* cow) {
        return std::find(told.begin(), told.end(), cow) != told.end();
      };
      CHECK(holds("100") == holds("101"));
    }
  }
}

TEST_CASE("A column set at the end ends under its head") {
  const auto pieces = laid(table_of(1))[0].pieces;
  const auto end_of = [&](const char* text) {
    return extent_of(Piece(test::placed(pieces, text))).right;
  };
  CHECK(end_of("7") == doctest::Approx(end_of("Days")));
}

TEST_CASE("A row with cells missing leaves them empty, and cells without a head are left out") {
  Table table = table_of(1);
  table.rows.push_back({{plain("200")}});
  table.rows.push_back({{plain("300")}, {}, {}, {plain("stray")}});
  const auto lines = test::lines_on(laid(table)[0].pieces);
  CHECK(lines.back() == "300");
}

TEST_CASE("A row that a page can hold is one piece") {
  Table table = table_of(1);
  std::string words;
  for (int i = 0; i < 60; ++i) words += "white line lesion ";
  table.rows[0][2] = {plain(words)};
  Typesetter typesetter = test::typesetter();
  CHECK(test::is_one_piece(table_strips(table, typesetter)));
}

TEST_CASE("A table without rows or without columns does no harm") {
  CHECK(laid(table_of(0)).size() == 1);
  CHECK(laid(Table{}).size() == 1);
}

}  // namespace evenclaw
