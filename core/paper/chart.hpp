// Charts as values: what is shown, with its uncertainty, and what it says in words. They become a
// drawing, so that a screen and paper show the same.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/paper/document.hpp"
#include "core/paper/drawing.hpp"

namespace evenclaw {

/// A named place on an axis, in place of numbers: "LH" at 1. Along x words are turned where they
/// would lie over each other; numbers are thinned.
struct AxisWord {
  double at = 0;
  std::string word;
};

/// An axis covers all that is drawn along it and ends at round numbers.
struct Axis {
  std::string name;  // "cows that came lame"
  std::string unit;  // "%"; may be empty
  bool from_zero = false;
  std::vector<AxisWord> words = {};
};

struct Range {
  double least = 0;
  double most = 0;
};

/// `within` is the interval the value is believed to lie in.
struct ChartPoint {
  double x = 0;
  double y = 0;
  std::optional<Range> within = std::nullopt;
  std::string label = {};  // beside it; may be empty
  bool strong = false;     // this herd, this cow
};

struct ChartPoints {
  std::vector<ChartPoint> points;
};

enum class Course {
  straight,  // from one value to the next
  steps      // a value holds until the next one
};

struct ChartLine {
  std::vector<Point> values;  // in the units of the axes, from left to right
  std::string label = {};     // at its end, in place of a legend; may be empty
  bool strong = false;        // thick: this herd among thin others
  Course course = Course::straight;
  Dash dash = Dash::solid;
  /// The interval of each value, in the same order, drawn as the two edges of a band; one that is
  /// missing or not finite is a gap in them. Empty draws none.
  std::vector<Range> within = {};
};

/// What tells groups apart; no colour does.
enum class Hatch { open, rising, falling, crossed, filled };

/// A bar from zero to its value, `width` wide in units of the x axis.
struct ChartBar {
  double x = 0;
  double value = 0;
  double width = 0.6;
  Hatch hatch = Hatch::open;
  std::optional<Range> within = std::nullopt;
  std::string label = {};  // above it; may be empty
};

struct ChartBars {
  std::vector<ChartBar> bars;
};

using ChartMark = std::variant<ChartPoints, ChartLine, ChartBars>;

/// Values that are no finite numbers are left out. Lengths are millimetres.
struct Chart {
  std::string title;   // the finding, as a sentence
  std::string method;  // in small print: out of how many, by which rule
  Axis x;
  Axis y;
  std::vector<ChartMark> marks;
  double width = 120;
  double height = 75;  // of the axes and what is between them; words come on top of it
};

/// Several charts of one kind beside each other over the same axes, each under its own title.
struct SmallMultiples {
  std::string title;
  std::string method;
  std::vector<Chart> charts;
  int columns = 3;
  double width = 180;
  double height = 40;  // of each
};

/// No wider than it says; as high as its words need. Equal on every target.
Drawing to_drawing(const Chart& chart);
Drawing to_drawing(const SmallMultiples& charts);

/// With title and method said to those who cannot see it.
Figure to_figure(const Chart& chart);
Figure to_figure(const SmallMultiples& charts);

}  // namespace evenclaw
