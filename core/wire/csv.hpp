// Rows as comma-separated text (RFC 4180) that a spreadsheet opens without running anything.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/wire/cells.hpp"

namespace evenclaw {

/// The column names as one line with its line end (CR LF).
std::string csv_header(const std::vector<Column>& columns);

/// One row with its line end. Text with a comma, quote, CR or LF is quoted. Text that begins with
/// = + - @ or a tab gets an apostrophe before it, because spreadsheets would take it for a formula;
/// integers never do. An empty cell is nothing, an empty text is "".
std::string csv_line(const Cells& cells);

/// Header and rows of a flat row type; no rows give the header alone.
template <HasFields T>
std::string csv_of(const std::vector<T>& rows) {
  std::string text = csv_header(columns_of<T>());
  for (const T& row : rows) text += csv_line(to_cells(row));
  return text;
}

}  // namespace evenclaw
