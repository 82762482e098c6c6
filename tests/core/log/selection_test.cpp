#include "core/log/selection.hpp"

#include <doctest/doctest.h>

#include <initializer_list>
#include <limits>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "tests/core/log/farm.hpp"

namespace evenclaw {

namespace {

using Named = std::pair<std::string, Cell>;

const std::string one_herd = to_text(named_id("one herd"));
const std::string other_herd = to_text(named_id("other herd"));

std::size_t column_of(std::string_view table, std::string_view column) {
  const std::vector<Column>& columns = find_table(table)->columns;
  for (std::size_t i = 0; i < columns.size(); ++i) {
    if (columns[i].name == column) return i;
  }
  FAIL("table " << table << " has no column " << column);
  return 0;
}

/// A finding of one herd; what is not given is empty text or 0, and empty where a cell may be.
Cells finding(std::initializer_list<Named> given) {
  Cells row;
  for (const Column& column : find_table("finding")->columns) {
    const Cell said =
        column.kind == CellKind::integer ? Cell(std::int64_t{0}) : Cell(std::string());
    row.push_back(column.may_be_empty ? Cell() : said);
  }
  row.front() = one_herd;
  for (const auto& [column, cell] : given) row[column_of("finding", column)] = cell;
  return row;
}

Cell text(std::string value) {
  return Cell(std::move(value));
}

Cell number(std::int64_t value) {
  return Cell(value);
}

/// One column of the rows, in their order.
std::vector<Cell> cells_of(const std::vector<Cells>& rows, std::string_view column) {
  std::vector<Cell> cells;
  cells.reserve(rows.size());
  for (const Cells& row : rows) cells.push_back(row[column_of("finding", column)]);
  return cells;
}

std::vector<std::string> tokens_of(const Outcome& outcome) {
  std::vector<std::string> tokens;
  if (outcome) return tokens;
  for (const Fault& fault : outcome.faults()) {
    CHECK(fault.slug == "selection-impossible");
    tokens.push_back(fault.token);
  }
  return tokens;
}

}  // namespace

TEST_CASE("what cannot be selected is refused, each fault with its name") {
  using Tokens = std::vector<std::string>;

  const struct {
    RowSelection selection;
    Tokens refused;
  } table[] = {
      {{"finding", {}, {}, {"day", "lesion"}}, {}},
      {{"finding", {}, {{"zone", Compare::at_least, number(4)}}, {}}, {}},
      {{"finding", {}, {{"zone", Compare::is_empty, {}}}, {}}, {}},
      {{"hoof", {}, {{"zone", Compare::equal, number(4)}}, {"day"}}, {"hoof"}},
      {{"finding", {}, {{"size", Compare::equal, number(4)}}, {"colour"}}, {"size", "colour"}},
      {{"finding", {}, {{"zone", Compare::equal, text("4")}}, {}}, {"zone"}},
      {{"finding", {}, {{"lesion", Compare::equal, number(4)}}, {}}, {"lesion"}},
      {{"finding", {}, {{"zone", Compare::equal, {}}}, {}}, {"zone"}},
      {{"finding", {}, {{"zone", Compare::not_empty, number(1)}}, {}}, {"zone"}},
  };

  for (const auto& row : table) {
    CAPTURE(row.selection.table);
    CHECK(tokens_of(check_selection(row.selection)) == row.refused);
  }
}

TEST_CASE("what cannot be counted is refused, each fault with its name") {
  CHECK(check_count({"a count", "turn", {"visit"}, {}, {"stops"}}));
  CHECK(tokens_of(check_count({"", "hoof", {}, {}, {}})) == std::vector<std::string>{"hoof"});
  CHECK(tokens_of(check_count({"", "turn", {"herd", "size"}, {}, {"reason", "colour"}})) ==
        std::vector<std::string>{"herd", "size", "reason", "colour"});
}

TEST_CASE("a filter is fulfilled by cells as it says, by an empty cell only when it asks for one") {
  const std::vector<Cells> rows = {finding({{"position", number(1)}}),
                                   finding({{"position", number(2)}, {"zone", number(3)}}),
                                   finding({{"position", number(3)}, {"zone", number(4)}}),
                                   finding({{"position", number(4)}, {"zone", number(5)}})};

  const struct {
    Compare compare;
    Cell cell;
    std::vector<std::int64_t> selected;
  } table[] = {{Compare::equal, number(4), {3}},      {Compare::not_equal, number(4), {2, 4}},
               {Compare::at_most, number(4), {2, 3}}, {Compare::at_least, number(4), {3, 4}},
               {Compare::is_empty, {}, {1}},          {Compare::not_empty, {}, {2, 3, 4}}};

  for (const auto& row : table) {
    CAPTURE(static_cast<int>(row.compare));
    std::vector<Cell> wanted;
    for (const std::int64_t position : row.selected) wanted.push_back(number(position));
    const RowSelection selection{"finding", {}, {{"zone", row.compare, row.cell}}, {}};
    CHECK(cells_of(select_rows(selection, rows), "position") == wanted);
  }
}

TEST_CASE("rows are those of the herd asked for and fulfil every condition") {
  const std::vector<Cells> rows = {
      finding({{"herd", text(other_herd)}, {"lesion", text("DD")}, {"foot", text("LH")}}),
      finding({{"lesion", text("DD")}, {"foot", text("RH")}}),
      finding({{"lesion", text("DD")}, {"foot", text("LH")}})};
  RowSelection selection{"finding", HerdId{named_id("one herd")}, {}, {}};
  CHECK(select_rows(selection, rows).size() == 2);
  selection.where = {{"lesion", Compare::equal, text("DD")}, {"foot", Compare::equal, text("LH")}};
  CHECK(select_rows(selection, rows) == std::vector<Cells>{rows[2]});
  selection.herd.reset();
  CHECK(select_rows(selection, rows).size() == 2);
}

TEST_CASE("rows are sorted by the named columns, then by the key, empty cells first") {
  const std::vector<Cells> rows = {finding({{"zone", number(10)}, {"cow", text("b")}}),
                                   finding({{"zone", number(9)}, {"cow", text("c")}}),
                                   finding({{"zone", number(10)}, {"cow", text("a")}}),
                                   finding({{"cow", text("d")}})};
  CHECK(cells_of(select_rows({"finding", {}, {}, {"zone"}}, rows), "cow") ==
        std::vector<Cell>{text("d"), text("c"), text("a"), text("b")});
  CHECK(cells_of(select_rows({"finding", {}, {}, {}}, rows), "cow") ==
        std::vector<Cell>{text("a"), text("b"), text("c"), text("d")});
}

TEST_CASE("a count groups by herd first and leaves empty cells out of its sums") {
  const std::vector<Cells> rows = {
      finding({{"herd", text(other_herd)}, {"lesion", text("SU")}, {"zone", number(4)}}),
      finding({{"lesion", text("SU")}, {"zone", number(4)}}), finding({{"lesion", text("SU")}}),
      finding({{"lesion", text("SU")}, {"zone", number(3)}}), finding({{"lesion", text("DD")}})};
  const std::vector<Cells> counted = count_rows({"", "finding", {"lesion"}, {}, {"zone"}}, rows);
  std::vector<Cells> wanted = {{text(one_herd), text("DD"), number(1), Cell()},
                               {text(one_herd), text("SU"), number(3), number(7)}};
  const Cells of_other = {text(other_herd), text("SU"), number(1), number(4)};
  wanted.insert(other_herd < one_herd ? wanted.begin() : wanted.end(), of_other);
  CHECK(counted == wanted);
  CHECK(count_rows({"", "finding", {}, {{"zone", Compare::is_empty, {}}}, {}}, rows) ==
        std::vector<Cells>{{text(one_herd), number(2)}});
}

TEST_CASE("a sum beyond what a cell can hold comes round instead of ending the program") {
  const Cell largest = number(std::numeric_limits<std::int64_t>::max());
  const std::vector<Cells> rows = {finding({{"zone", largest}}), finding({{"zone", number(1)}})};
  CHECK(count_rows({"", "finding", {}, {}, {"zone"}}, rows) ==
        std::vector<Cells>{
            {text(one_herd), number(2), number(std::numeric_limits<std::int64_t>::min())}});
}

TEST_CASE("every table is found by its name and herd leads its key") {
  std::set<std::string_view> names;
  for (const TableShape& shape : all_tables()) {
    CAPTURE(shape.name);
    CHECK(names.insert(shape.name).second);
    CHECK(find_table(shape.name) == &shape);
    CHECK(shape.columns.front().name == "herd");
    CHECK(shape.key_columns >= 2);
  }
  CHECK(find_table("hoof") == nullptr);
}

}  // namespace evenclaw
