// What a document is cut into before it is dealt out to pages: strips that lie one below the other
// and are never cut themselves.
#pragma once

#include <memory>
#include <vector>

#include "report/pdf/piece.hpp"

namespace evenclaw {

struct Strip;
using Strips = std::vector<Strip>;

/// A black box round the strips that share it, on each page anew. It is as wide as the column.
struct Frame {
  double stroke = 0;
  double padding = 0;  // above the first strip and below the last one
};

/// Lengths are millimetres; pieces are placed from the top left corner of the strip.
struct Strip {
  double height = 0;
  std::vector<Piece> pieces;
  double gap_before = 0;  // none at the top of a page
  double gap_after = 0;   // of two gaps that meet the wider one counts
  bool with_next = false;
  bool starts_page = false;
  std::shared_ptr<const Frame> frame = nullptr;
  // Stands above it again when it comes first on a page and the strip before it shared the head.
  std::shared_ptr<const Strips> head = nullptr;
  int block = -1;  // which block of the document it belongs to
};

/// No page parts them, if one page can hold them.
Strips kept_together(Strips strips);

/// `second` below `first`.
Strips below(Strips first, Strips second);

/// Columns beside each other, from the same top. Low ones become one strip. Of high ones a page may
/// end where no line of any column stands.
Strips beside(const std::vector<Strips>& columns);

/// The same with the first lines of all columns on one baseline.
Strips beside_on_baseline(std::vector<Strips> columns);

/// All of it, gaps between them included.
double height_of(const Strips& strips);

/// Moves all pieces to the right.
Strips indented(Strips strips, double by);

/// Room above the first strip and below the last that belongs to it on every page.
Strips padded(Strips strips, double above, double below);

}  // namespace evenclaw
