// Strips dealt out to sheets of A4.
#pragma once

#include <vector>

#include "report/pdf/strip.hpp"

namespace evenclaw {

/// A4 and its margins in millimetres; the column of text lies between them.
inline constexpr double paper_width = 210;
inline constexpr double paper_height = 297;
inline constexpr double margin_top = 14;
inline constexpr double margin_side = 12;
inline constexpr double margin_bottom = 16;
inline constexpr double column_width = paper_width - 2 * margin_side;
inline constexpr double column_height = paper_height - margin_top - margin_bottom;

/// Where a strip came to lie, from the top of the paper.
struct StripPlace {
  std::size_t strip = 0;  // its number in the flow; of a repeated head the one it stands above
  double top = 0;
  double bottom = 0;
  bool repeated = false;
};

struct Page {
  std::vector<Piece> pieces;  // placed from the top left corner of the paper
  std::vector<StripPlace> places;
};

/// A strip no page could hold goes on on the next one, between two of its lines.
///
/// Strips that belong together move to the next page as one, unless no page could hold them: then
/// they begin on a new page and break where it is full. At least one page.
std::vector<Page> dealt_to_pages(const Strips& strips);

}  // namespace evenclaw
