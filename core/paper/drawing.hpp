// Our own drawing commands: closed and open paths of lines and curves, and short texts.
#pragma once

#include <string>
#include <variant>
#include <vector>

namespace evenclaw {

/// Millimetres; x to the right, y down, (0, 0) is the top left corner of the drawing.
struct Point {
  double x = 0;
  double y = 0;
};

/// What survives a bad copier: black, white and one grey.
enum class Ink { none, black, grey, white };

enum class Dash { solid, dashed, dotted };

struct Stroke {
  Ink ink = Ink::black;
  double width = 0.3;  // mm
  Dash dash = Dash::solid;
};

enum class StepKind { move, line, curve, close };

/// One step of a path. `to` is where it ends; `bend_1` and `bend_2` are the control points of a
/// cubic curve. A step that closes goes back to the last move.
struct PathStep {
  StepKind kind = StepKind::move;
  Point to;
  Point bend_1;
  Point bend_2;
};

struct Path {
  std::vector<PathStep> steps;
  Ink fill = Ink::none;
  Stroke stroke;
};

enum class Anchor { start, middle, end };

struct Label {
  Point at;  // on the baseline
  std::string text;
  double size = 3;  // mm
  Anchor anchor = Anchor::start;
  bool strong = false;
  Ink ink = Ink::black;
  bool turned = false;  // about `at`, so that it reads upwards
};

using DrawingMark = std::variant<Path, Label>;

/// Marks are painted in their order, later ones over earlier ones.
struct Drawing {
  double width = 0;   // mm
  double height = 0;  // mm
  std::vector<DrawingMark> marks;
};

PathStep move_to(Point to);
PathStep line_to(Point to);
PathStep curve_to(Point bend_1, Point bend_2, Point to);
PathStep close_path();

/// A straight line.
Path line(Point from, Point to, Stroke stroke);

/// A closed ellipse of four curves (within 0.03 % of the true one).
Path ellipse(Point centre, double radius_x, double radius_y, Ink fill, Stroke stroke);

/// A turn about the origin followed by a shift: the sine and cosine are given as numbers, so that
/// both targets draw the same to the last digit. `mirrored` exchanges left and right first.
struct Placement {
  Point shift;
  double cosine = 1;
  double sine = 0;
  double scale = 1;
  bool mirrored = false;
};

Point placed(Point point, const Placement& placement);
std::vector<PathStep> placed(std::vector<PathStep> steps, const Placement& placement);

}  // namespace evenclaw
