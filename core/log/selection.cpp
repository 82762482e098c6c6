#include "core/log/selection.hpp"

#include <algorithm>
#include <cassert>
#include <cstddef>
#include <map>
#include <utility>

#include "core/trade/rows.hpp"

namespace evenclaw {

namespace {

std::vector<TableShape> shapes_of_rows() {
  std::vector<TableShape> shapes;
  Rows rows;
  for_each_table(rows, [&](auto& table) {
    using Row = typename std::remove_reference_t<decltype(table)>::value_type;
    shapes.push_back({Row::table, Row::key_columns, columns_of<Row>()});
  });
  return shapes;
}

std::optional<std::size_t> position_of(const TableShape& shape, std::string_view column) {
  for (std::size_t i = 0; i < shape.columns.size(); ++i) {
    if (shape.columns[i].name == column) return i;
  }
  return std::nullopt;
}

// ---- refusing what cannot be answered

class Refusals {
 public:
  void add(std::string message, std::string_view token) {
    faults_.push_back(Fault{"selection-impossible", std::move(message), std::string(token)});
  }

  const TableShape* table(std::string_view name) {
    const TableShape* shape = find_table(name);
    if (shape == nullptr) add("there is no such table", name);
    return shape;
  }

  void column(const TableShape& shape, std::string_view name) {
    if (!position_of(shape, name))
      add("table " + std::string(shape.name) + " has no such column", name);
  }

  void filter(const TableShape& shape, const Filter& filter) {
    const std::optional<std::size_t> at = position_of(shape, filter.column);
    if (!at) return column(shape, filter.column);
    const bool is_bare = std::holds_alternative<std::monostate>(filter.cell);
    if (filter.compare == Compare::is_empty || filter.compare == Compare::not_empty) {
      if (!is_bare) add("a filter on emptiness compares with nothing", filter.column);
      return;
    }
    const bool is_integer = std::holds_alternative<std::int64_t>(filter.cell);
    const bool wants_integer = shape.columns[*at].kind == CellKind::integer;
    if (is_bare || is_integer != wants_integer) {
      add(wants_integer ? "this column is compared with a whole number"
                        : "this column is compared with text",
          filter.column);
    }
  }

  void sum(const TableShape& shape, const std::string& name) {
    column(shape, name);
    const auto at = position_of(shape, name);
    if (at && shape.columns[*at].kind != CellKind::integer) {
      add("only whole numbers can be summed", name);
    }
  }

  Outcome outcome() && {
    if (!faults_.empty()) return std::move(faults_);
    return Done{};
  }

 private:
  Faults faults_;
};

// ---- answering

bool holds(Compare compare, const Cell& wanted, const Cell& cell) {
  const bool is_empty = std::holds_alternative<std::monostate>(cell);
  switch (compare) {
    case Compare::is_empty:
      return is_empty;
    case Compare::not_empty:
      return !is_empty;
    case Compare::equal:
      return !is_empty && cell == wanted;
    case Compare::not_equal:
      return !is_empty && cell != wanted;
    case Compare::at_most:
      return !is_empty && cell <= wanted;
    case Compare::at_least:
      return !is_empty && cell >= wanted;
  }
  return false;
}

std::vector<std::size_t> positions_of(const TableShape& shape,
                                      const std::vector<std::string>& columns) {
  std::vector<std::size_t> positions;
  for (const std::string& column : columns) {
    if (const auto at = position_of(shape, column)) positions.push_back(*at);
  }
  return positions;
}

bool all_hold(const TableShape& shape, const std::vector<Filter>& where, const Cells& row) {
  return std::all_of(where.begin(), where.end(), [&](const Filter& filter) {
    const auto at = position_of(shape, filter.column);
    return at && holds(filter.compare, filter.cell, row[*at]);
  });
}

void add_to(Cell& sum, const Cell& cell) {
  const auto* number = std::get_if<std::int64_t>(&cell);
  if (number == nullptr) return;
  const auto* before = std::get_if<std::int64_t>(&sum);
  // Unsigned, so that not even a hostile row can overflow.
  const auto total = static_cast<std::uint64_t>(before == nullptr ? 0 : *before) +
                     static_cast<std::uint64_t>(*number);
  sum = static_cast<std::int64_t>(total);
}

}  // namespace

std::span<const TableShape> all_tables() {
  static const std::vector<TableShape> shapes = shapes_of_rows();
  return shapes;
}

const TableShape* find_table(std::string_view name) {
  for (const TableShape& shape : all_tables()) {
    if (shape.name == name) return &shape;
  }
  return nullptr;
}

RowsOf rows_of(const TableShape& shape) {
  return shape.columns.at(1).name == "cow" ? RowsOf::cow : RowsOf::visit;
}

Outcome check_selection(const RowSelection& selection) {
  Refusals refusals;
  if (const TableShape* shape = refusals.table(selection.table)) {
    for (const Filter& filter : selection.where) refusals.filter(*shape, filter);
    for (const std::string& column : selection.sorted_by) refusals.column(*shape, column);
  }
  return std::move(refusals).outcome();
}

Outcome check_count(const CountQuery& query) {
  Refusals refusals;
  if (const TableShape* shape = refusals.table(query.table)) {
    for (const std::string& column : query.group_by) {
      refusals.column(*shape, column);
      if (column == shape->columns.front().name) refusals.add("herd is always a group", column);
    }
    for (const Filter& filter : query.where) refusals.filter(*shape, filter);
    for (const std::string& column : query.sums) refusals.sum(*shape, column);
  }
  return std::move(refusals).outcome();
}

RowPicker::RowPicker(const RowSelection& selection) {
  const TableShape* shape = find_table(selection.table);
  assert(shape != nullptr);
  if (selection.herd) conditions_.push_back({0, Compare::equal, Cell{to_text(*selection.herd)}});
  for (const Filter& filter : selection.where) {
    const auto at = position_of(*shape, filter.column);
    assert(at);
    if (at) conditions_.push_back({*at, filter.compare, filter.cell});
  }
  order_ = positions_of(*shape, selection.sorted_by);
  for (int i = 0; i < shape->key_columns; ++i) order_.push_back(static_cast<std::size_t>(i));
}

void RowPicker::offer(const Cells& row) {
  const bool fits =
      std::all_of(conditions_.begin(), conditions_.end(), [&](const Condition& condition) {
        return holds(condition.compare, condition.cell, row[condition.column]);
      });
  if (fits) fitting_.push_back(&row);
}

void RowPicker::offer(std::span<const Cells> rows) {
  for (const Cells& row : rows) offer(row);
}

std::vector<Cells> RowPicker::picked() && {
  const auto stands_before = [&](const Cells* a, const Cells* b) {
    for (const std::size_t column : order_) {
      if ((*a)[column] != (*b)[column]) return (*a)[column] < (*b)[column];
    }
    return false;
  };
  std::sort(fitting_.begin(), fitting_.end(), stands_before);
  std::vector<Cells> rows;
  rows.reserve(fitting_.size());
  for (const Cells* row : fitting_) rows.push_back(*row);
  return rows;
}

std::vector<Cells> select_rows(const RowSelection& selection, std::span<const Cells> rows) {
  RowPicker picker(selection);
  picker.offer(rows);
  return std::move(picker).picked();
}

std::vector<Cells> count_rows(const CountQuery& query, std::span<const Cells> rows) {
  const TableShape* shape = find_table(query.table);
  assert(shape != nullptr);
  std::vector<std::size_t> groups = positions_of(*shape, query.group_by);
  groups.insert(groups.begin(), 0);
  const std::vector<std::size_t> sums = positions_of(*shape, query.sums);

  std::map<Cells, Cells> counted;  // group -> count and sums
  for (const Cells& row : rows) {
    if (!all_hold(*shape, query.where, row)) continue;
    Cells group;
    for (const std::size_t column : groups) group.push_back(row[column]);
    const auto [at, is_new] = counted.emplace(std::move(group), Cells(1 + sums.size()));
    add_to(at->second.front(), Cell{std::int64_t{1}});
    for (std::size_t i = 0; i < sums.size(); ++i) add_to(at->second[i + 1], row[sums[i]]);
  }

  std::vector<Cells> result;
  for (const auto& [group, figures] : counted) {
    result.push_back(group);
    result.back().insert(result.back().end(), figures.begin(), figures.end());
  }
  return result;
}

}  // namespace evenclaw
