// What lies on a page of paper: lines of text, paths and drawings, each at its place.
#pragma once

#include <memory>
#include <string>
#include <variant>
#include <vector>

#include "core/paper/drawing.hpp"

namespace evenclaw {

/// One line of text as it was set. Lengths are millimetres.
struct SetLine {
  std::string text;
  double width = 0;
  double ascent = 0;   // what the letters reach above the baseline
  double descent = 0;  // and below it
  // The PangoLayout it is a line of, and which one; whoever paints it knows the library.
  std::shared_ptr<void> layout;
  int index = 0;
};

struct PlacedLine {
  SetLine line;
  Point at;  // on the baseline
};

struct PlacedDrawing {
  Drawing drawing;
  std::vector<SetLine> labels;  // one for each label of the drawing, in their order
  Point at;                     // its top left corner
  double scale = 1;
};

using Piece = std::variant<PlacedLine, Path, PlacedDrawing>;

/// The smallest upright box that holds it; control points of curves count as points of the path.
struct Extent {
  double left = 0;
  double top = 0;
  double right = 0;
  double bottom = 0;
};

Extent extent_of(const Piece& piece);
Piece moved(Piece piece, double x, double y);

/// An upright box whose stroke lies inside of `extent`.
Path box(const Extent& extent, double stroke);

/// The same, open below: a reader sees that it goes on overleaf.
Path box_that_goes_on(const Extent& extent, double stroke);

}  // namespace evenclaw
