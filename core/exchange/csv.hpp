// Tables as herd programs and spreadsheets write them out: a head, then rows of cells.
#pragma once

#include <deque>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.hpp"

namespace evenclaw {

struct CsvRow {
  int line = 0;                         // in the file, from 1; of a cell over lines the first
  std::vector<std::string_view> cells;  // as many as the head has; of the text, or of `unquoted`
};

/// May be moved and not copied: its cells lie in the text it was read from and in itself.
struct CsvTable {
  CsvTable() = default;
  CsvTable(CsvTable&&) = default;
  CsvTable& operator=(CsvTable&&) = default;
  CsvTable(const CsvTable&) = delete;
  CsvTable& operator=(const CsvTable&) = delete;
  ~CsvTable() = default;

  char separator = ',';
  int head_line = 0;  // 0 when no line could be read
  std::vector<std::string> head;
  std::vector<CsvRow> rows;
  Faults faults;                     // of the head; with one there are no rows
  Faults row_faults;                 // of the lines that are not among the rows
  std::deque<std::string> unquoted;  // cells that stand otherwise in the text
};

/// Cells parted by semicolons, tabs, bars or commas: by whichever most of the first lines have
/// alike often, in this order. The head is the first line with as many cells as most of those have,
/// and of three or more cells more than one that holds something, so that a title above it does no
/// harm. In double quotes a cell may hold separators and line
/// ends, and a quote said twice is one (RFC 4180). Spaces at the ends of a cell are left out, lines
/// without a cell that holds anything are passed over, empty cells beyond the head too; line ends
/// of either kind do no harm. Cells are text: leading zeros stay, a formula is never worked out;
/// `="0412"`, by which spreadsheets keep zeros, is 0412 and an apostrophe before what would be a
/// formula is left out (csv_cell() puts it there).
/// Faults "list-unreadable" with line and column: a quote that is not closed or with something
/// behind it, more or fewer cells than the head has; of the head an empty cell above something or
/// the same one twice; no head at all. `text` must outlive the table and be valid UTF-8.
CsvTable csv_table(std::string_view text);

/// The fault of a list at that line; the message is made to hold the token.
Fault list_unreadable(int line, std::string message, std::string token, std::string remedy);

}  // namespace evenclaw
