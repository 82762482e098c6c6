// Which rows or counts are wanted, as values that every store answers alike.
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/id.hpp"
#include "core/base/result.hpp"
#include "core/wire/cells.hpp"

namespace evenclaw {

enum class Compare { equal, not_equal, at_most, at_least, is_empty, not_empty };

/// A condition on one bare column; conditions are joined by "and". As in SQL an empty cell fulfils
/// none but is_empty: it neither equals nor differs, and lies on no side. is_empty and not_empty
/// compare with an empty cell, the others with one of the column's kind.
struct Filter {
  std::string column;
  Compare compare = Compare::equal;
  Cell cell = {};
};

/// Rows of one table of one herd (or of all herds when none is given), sorted by the named
/// columns and then by the key: empty cells first, then numbers, then texts by their bytes.
struct RowSelection {
  std::string table;
  std::optional<HerdId> herd;
  std::vector<Filter> where;
  std::vector<std::string> sorted_by;
};

/// Counts of rows of one table by bare columns; herd is always the first group, no joins, no
/// expressions, so that any store, sharded or not, can answer it. Each result row holds the herd,
/// the group columns, the count, then the sums, sorted by the groups as rows are. Empty cells are
/// left out of a sum; the sum of nothing but empty cells is empty.
struct CountQuery {
  std::string name;
  std::string table;
  std::vector<std::string> group_by;  // without herd, which is always there
  std::vector<Filter> where;
  std::vector<std::string> sums;  // integer columns
};

/// The named counts of this version, about ten.
std::span<const CountQuery> named_counts();

/// What a table looks like, for translators; nothing when there is no such table.
struct TableShape {
  std::string_view name;
  int key_columns;  // the first so many columns are the key, herd first
  std::vector<Column> columns;
};

std::span<const TableShape> all_tables();
const TableShape* find_table(std::string_view name);

/// Whose rows a table holds: those of a cow's picture, or those of a visit's and of what is
/// pictured as a visit is. The second column, which is part of the key, names whose.
enum class RowsOf { cow, visit };
RowsOf rows_of(const TableShape& shape);

/// Refuses unknown tables and columns (slug "selection-impossible", our programs' mistake or a
/// newer client's), sums over text, filters of the wrong kind.
Outcome check_selection(const RowSelection& selection);
Outcome check_count(const CountQuery& query);

/// Answers a selection over rows in memory. Every row offered is one of the named table and stays
/// where it is until the answer is given; what the checks above refuse is our mistake here.
class RowPicker {
 public:
  explicit RowPicker(const RowSelection& selection);

  void offer(const Cells& row);
  void offer(std::span<const Cells> rows);

  /// Those that fit, in the order the contract demands.
  [[nodiscard]] std::vector<Cells> picked() &&;

 private:
  struct Condition {
    std::size_t column;
    Compare compare;
    Cell cell;
  };

  std::vector<Condition> conditions_;
  std::vector<std::size_t> order_;
  std::vector<const Cells*> fitting_;
};

/// Both answered over rows in memory at once, on the same terms.
std::vector<Cells> select_rows(const RowSelection& selection, std::span<const Cells> rows);
std::vector<Cells> count_rows(const CountQuery& query, std::span<const Cells> rows);

}  // namespace evenclaw
