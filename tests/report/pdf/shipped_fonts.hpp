// The fonts that ship with the program, for tests that set text.
#pragma once

#include <algorithm>
#include <string>
#include <variant>
#include <vector>

#include "report/pdf/typesetter.hpp"
#include "tests/store/temporary_folder.hpp"

namespace evenclaw::test {

inline std::vector<PrintFont> shipped_fonts() {
  static const std::string regular = bytes_of("data/fonts/b612-regular.otf");
  static const std::string bold = bytes_of("data/fonts/b612-bold.otf");
  return {{regular}, {bold}};
}

inline Typesetter typesetter() {
  return *Typesetter::with(shipped_fonts(), FontReach::shipped, "en");
}

/// The lines of text on it, in the order in which they were placed.
inline std::vector<std::string> lines_on(const std::vector<Piece>& pieces) {
  std::vector<std::string> lines;
  for (const Piece& piece : pieces) {
    if (const auto* placed = std::get_if<PlacedLine>(&piece)) lines.push_back(placed->line.text);
  }
  return lines;
}

inline std::vector<std::string> lines_of(const Strips& strips) {
  std::vector<std::string> lines;
  for (const Strip& strip : strips) {
    for (std::string& line : lines_on(strip.pieces)) lines.push_back(std::move(line));
  }
  return lines;
}

/// Where the first line that reads so stands; far outside of any page when none does.
inline PlacedLine placed(const std::vector<Piece>& pieces, const std::string& text) {
  for (const Piece& piece : pieces) {
    const auto* line = std::get_if<PlacedLine>(&piece);
    if (line != nullptr && line->line.text == text) return *line;
  }
  return {{}, {-1000, -1000}};
}

/// All but the last strip of each are bound to the next one.
inline bool is_one_piece(const Strips& strips) {
  for (std::size_t i = 0; i + 1 < strips.size(); ++i) {
    if (!strips[i].with_next) return false;
  }
  return true;
}

/// The upright boxes among the paths, as their outer edges.
inline std::vector<Extent> boxes_on(const std::vector<Piece>& pieces) {
  std::vector<Extent> boxes;
  for (const Piece& piece : pieces) {
    const auto* path = std::get_if<Path>(&piece);
    if (path == nullptr || path->steps.size() != 5) continue;
    const Extent inner = extent_of(piece);
    const double half = path->stroke.width / 2;
    boxes.push_back({inner.left - half, inner.top - half, inner.right + half, inner.bottom + half});
  }
  return boxes;
}

/// Boxes that go on overleaf.
inline std::size_t open_boxes_on(const std::vector<Piece>& pieces) {
  return static_cast<std::size_t>(
      std::count_if(pieces.begin(), pieces.end(), [](const Piece& piece) {
        const auto* path = std::get_if<Path>(&piece);
        return path != nullptr && path->steps.size() == 4;
      }));
}

}  // namespace evenclaw::test
