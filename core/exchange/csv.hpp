// Tables as herd programs and spreadsheets write them out: a head, then rows of cells.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "core/base/result.hpp"

namespace evenclaw {

struct CsvRow {
  int line = 0;                    // in the file, from 1
  std::vector<std::string> cells;  // as many as the head has
};

struct CsvTable {
  int head_line = 0;  // 0 when no line could be read
  std::vector<std::string> head;
  std::vector<CsvRow> rows;
  Faults faults;  // of the lines that are not among the rows, and of the head
};

/// Cells parted by semicolons, tabs or commas, whichever the head has, in this order; in double
/// quotes a cell may hold any of them, and a quote said twice is one. Spaces at the ends of a cell
/// are left out, lines without a cell that holds anything are passed over, the mark some editors
/// put first and line ends of either kind do no harm. Cells are text: leading zeros stay.
/// Faults "list-unreadable", one for each line that is left out: bytes that are no UTF-8,
/// characters that cannot be shown, a quote that is not closed in its line or something behind its
/// end, more or fewer cells than the head has; of the head an empty cell or the same one twice; no
/// head at all.
CsvTable csv_table(std::span<const std::string> lines);

/// The fault of a list at that line; the message is made to hold the token.
Fault list_unreadable(int line, std::string message, std::string token, std::string remedy);

}  // namespace evenclaw
