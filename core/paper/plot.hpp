// The part of a chart between its axes: what the marks look like there.
#pragma once

#include <vector>

#include "core/paper/chart.hpp"
#include "core/paper/hatching.hpp"

namespace evenclaw {

inline constexpr double chart_letters = 3;  // mm

/// Where values lie in the drawing: both ranges have a width.
struct Plot {
  Area area;
  Range x;
  Range y;
};

Point in_plot(const Plot& plot, double x, double y);

/// Everything that is drawn along x and along y, whiskers and the feet of bars included; nothing
/// where there is nothing finite.
std::optional<Range> range_along_x(const std::vector<ChartMark>& marks);
std::optional<Range> range_along_y(const std::vector<ChartMark>& marks);
std::optional<Range> united(const std::optional<Range>& a, const std::optional<Range>& b);

/// The marks in their order, then the words that belong to them.
std::vector<DrawingMark> plotted(const Plot& plot, const std::vector<ChartMark>& marks);

/// The room the labels at the ends of lines take to the right of the plot.
double room_for_labels(const std::vector<ChartMark>& marks);

}  // namespace evenclaw
