// How the width of a page is shared among the columns of a table.
#pragma once

#include <vector>

namespace evenclaw {

/// What a column asks for, in millimetres: its widest word, and its widest cell on one line.
struct ColumnNeed {
  double least = 0;
  double most = 0;
};

/// One width per column, `whole` together. Every column gets its most when there is room (what is
/// left is shared in proportion to it), at least its least when there is room for that (what is
/// left goes to who wants least more first), and else a share of the width in proportion to its
/// least. No columns, no widths.
std::vector<double> column_widths(const std::vector<ColumnNeed>& needs, double whole);

}  // namespace evenclaw
