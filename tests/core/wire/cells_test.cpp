#include "core/wire/cells.hpp"

#include <doctest/doctest.h>

#include <ostream>

#include "core/base/random.hpp"
#include "tests/core/wire/sample_types.hpp"

namespace evenclaw {

namespace {

FlatRow full_row() {
  return {HerdId{uuid_derived("herd")},
          Day{20781},
          "Even",
          Weekday::friday,
          true,
          -3,
          {1, 2},
          Length{755},
          "a, b",
          Day{0}};
}

FlatRow random_row(RandomStream& random) {
  FlatRow row = full_row();
  row.day = Day{static_cast<std::int32_t>(random.below(40000))};
  row.weekday = static_cast<Weekday>(random.below(7));
  row.is_open = random.chance(0.5);
  row.count = static_cast<std::int32_t>(random.next_u32());
  if (random.chance(0.5)) row.height.reset();
  if (random.chance(0.5)) row.remark.reset();
  if (random.chance(0.5)) row.until.reset();
  return row;
}

}  // namespace

TEST_CASE("columns come from the fields in their order") {
  const std::vector<Column> columns = columns_of<FlatRow>();
  std::string listed;
  for (const Column& column : columns) {
    listed += std::string(column.name) + (column.kind == CellKind::integer ? " integer" : " text") +
              (column.may_be_empty ? "? " : " ") + std::string(column.unit_or_words) + ": " +
              std::string(column.doc) + "\n";
  }
  CHECK(listed ==
        "herd text id: the herd\n"
        "day text ISO day: the day\n"
        "name text text: called\n"
        "weekday text word: on which day\n"
        "is_open integer bool: open\n"
        "count integer whole number: how many\n"
        "halves text text: both halves\n"
        "height integer? tenths of mm: how high\n"
        "remark text? text: if any\n"
        "until text? ISO day: last day\n");
}

TEST_CASE("a row becomes one cell per column") {
  const Cells cells = to_cells(full_row());
  const Cells expected = {to_text(uuid_derived("herd")),
                          std::string("2026-11-24"),
                          std::string("Even"),
                          std::string("friday"),
                          std::int64_t{1},
                          std::int64_t{-3},
                          std::string("1+2"),
                          std::int64_t{755},
                          std::string("a, b"),
                          std::string("1970-01-01")};
  CHECK((cells == expected));
}

TEST_CASE("an empty optional is an empty cell") {
  const Cells cells = to_cells(FlatRow{});
  CHECK(std::holds_alternative<std::monostate>(cells[7]));
  CHECK(std::holds_alternative<std::monostate>(cells[8]));
  CHECK(std::holds_alternative<std::monostate>(cells[9]));
}

TEST_CASE("every row reads back from its cells") {
  RandomStream random(19, 1);
  for (int i = 0; i < 500; ++i) {
    const FlatRow row = random_row(random);
    const Result<FlatRow> again = from_cells<FlatRow>(to_cells(row));
    REQUIRE(again.ok());
    REQUIRE(*again == row);
  }
}

TEST_CASE("days in cells are ordered as texts like in time") {
  RandomStream random(19, 2);
  for (int i = 0; i < 500; ++i) {
    FlatRow a = random_row(random);
    FlatRow b = random_row(random);
    REQUIRE((a.day < b.day) == (to_cells(a)[1] < to_cells(b)[1]));
  }
}

TEST_CASE("every cell that does not fit its column is told by the column's name") {
  Cells cells = to_cells(full_row());
  cells[1] = std::string("24.11.2026");
  cells[2] = std::monostate{};
  cells[3] = std::string("fri");
  cells[4] = std::int64_t{2};
  cells[5] = std::int64_t{1} << 40;
  cells[7] = std::string("755");
  cells[8] = std::int64_t{3};
  const Result<FlatRow> row = from_cells<FlatRow>(cells);
  REQUIRE_FALSE(row.ok());
  std::string names;
  for (const Fault& fault : row.faults()) {
    CHECK(fault.slug == "row-unreadable");
    names += fault.token + " ";
  }
  CHECK(names == "day name weekday is_open count height remark ");
  CHECK(row.faults()[0].message == "day: expected ISO day, found \"24.11.2026\"");
  CHECK(row.faults()[1].message == "name: expected text, found nothing");
  CHECK(row.faults()[3].message == "is_open: expected true or false, found 2");
}

TEST_CASE("a row with too few or too many cells is refused") {
  Cells cells = to_cells(full_row());
  cells.emplace_back(std::int64_t{1});
  CHECK(from_cells<FlatRow>(cells).faults()[0].message == "expected 10 columns, found 11");
  CHECK(from_cells<FlatRow>({}).faults()[0].slug == "row-unreadable");
}

}  // namespace evenclaw
