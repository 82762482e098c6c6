// Lists of ours for spreadsheets and herd programs: CSV (RFC 4180) of any row type.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/wire/cells.hpp"

namespace evenclaw {

/// One cell as it stands in a line. Text that a spreadsheet would take for a formula (it begins
/// with = + - @, a tab or a line end) has an apostrophe before it; whole numbers stand as they are.
/// In double quotes when it holds a comma, a quote or a line end, or has a space at an end.
std::string csv_cell(const Cell& cell);

/// Cells joined by commas, with CR LF behind them.
std::string csv_line(const Cells& cells);

/// A head with the names of the fields, then a line for each row; UTF-8. What each column holds
/// stands in docs/format/data-dictionary.md. No rows give the head alone.
template <HasFields T>
std::string csv_of(const std::vector<T>& rows) {
  Cells head;
  for (const Column& column : columns_of<T>()) head.emplace_back(std::string(column.name));
  std::string csv = csv_line(head);
  for (const T& row : rows) csv += csv_line(to_cells(row));
  return csv;
}

}  // namespace evenclaw
