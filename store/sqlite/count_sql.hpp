// Selections and counts as SQL: pure functions from a query to a text and its parameters.
#pragma once

#include <string>
#include <vector>

#include "core/log/selection.hpp"
#include "core/wire/cells.hpp"

namespace evenclaw {

/// One statement and what is bound to its question marks, in order.
struct SqlText {
  std::string text;
  std::vector<Cell> parameters;
  friend bool operator==(const SqlText&, const SqlText&) = default;
};

// Both expect a query that check_selection() or check_count() let pass.

/// All columns of the rows wanted, sorted as select_rows() sorts.
SqlText select_sql(const RowSelection& selection);

/// Herd, group columns, count, sums, sorted as count_rows() sorts. One table, bare columns in
/// GROUP BY, the herd first among them.
SqlText count_sql(const CountQuery& query);

/// A name as SQL takes it whatever words SQL keeps for itself.
std::string quoted_name(std::string_view name);

}  // namespace evenclaw
