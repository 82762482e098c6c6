#include "core/paper/plot.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/paper/drawn_words.hpp"

namespace evenclaw {

namespace {

constexpr double label_gap = 1.5;
constexpr double whisker_end = 0.9;  // half its length
constexpr Stroke thin{Ink::black, 0.2, Dash::solid};

bool is_finite(const Range& range) {
  return std::isfinite(range.least) && std::isfinite(range.most);
}

bool is_drawn(const ChartPoint& point) {
  return std::isfinite(point.x) && std::isfinite(point.y);
}

bool is_drawn(Point value) {
  return std::isfinite(value.x) && std::isfinite(value.y);
}

bool is_drawn(const ChartBar& bar) {
  return std::isfinite(bar.x) && std::isfinite(bar.value) && bar.width > 0;
}

void widen(std::optional<Range>& range, double value) {
  if (!std::isfinite(value)) return;
  if (!range) range = Range{value, value};
  range->least = std::min(range->least, value);
  range->most = std::max(range->most, value);
}

void widen(std::optional<Range>& range, const std::optional<Range>& within) {
  if (!within || !is_finite(*within)) return;
  widen(range, within->least);
  widen(range, within->most);
}

std::optional<Range> along_x(const ChartPoints& points) {
  std::optional<Range> range;
  for (const ChartPoint& point : points.points) {
    if (is_drawn(point)) widen(range, point.x);
  }
  return range;
}

std::optional<Range> along_y(const ChartPoints& points) {
  std::optional<Range> range;
  for (const ChartPoint& point : points.points) {
    if (!is_drawn(point)) continue;
    widen(range, point.y);
    widen(range, point.within);
  }
  return range;
}

/// Of a value that is drawn.
std::optional<Range> within_of(const ChartLine& line, std::size_t index) {
  const bool is_there = index < line.within.size() && is_drawn(line.values[index]);
  if (!is_there || !is_finite(line.within[index])) return std::nullopt;
  return line.within[index];
}

std::optional<Range> along_x(const ChartLine& line) {
  std::optional<Range> range;
  for (const Point& value : line.values) {
    if (is_drawn(value)) widen(range, value.x);
  }
  return range;
}

std::optional<Range> along_y(const ChartLine& line) {
  std::optional<Range> range;
  for (const Point& value : line.values) {
    if (is_drawn(value)) widen(range, value.y);
  }
  for (std::size_t i = 0; i < line.values.size(); ++i) widen(range, within_of(line, i));
  return range;
}

std::optional<Range> along_x(const ChartBars& bars) {
  std::optional<Range> range;
  for (const ChartBar& bar : bars.bars) {
    if (!is_drawn(bar)) continue;
    widen(range, bar.x - bar.width / 2);
    widen(range, bar.x + bar.width / 2);
  }
  return range;
}

std::optional<Range> along_y(const ChartBars& bars) {
  std::optional<Range> range;
  for (const ChartBar& bar : bars.bars) {
    if (!is_drawn(bar)) continue;
    widen(range, 0.0);
    widen(range, bar.value);
    widen(range, bar.within);
  }
  return range;
}

using Drawn = std::vector<DrawingMark>;

void add_whisker(Drawn& drawn, const Plot& plot, double x, const std::optional<Range>& within) {
  if (!within || !is_finite(*within)) return;
  const Point low = in_plot(plot, x, within->least);
  const Point high = in_plot(plot, x, within->most);
  Path path = line(low, high, {Ink::black, 0.3, Dash::solid});
  for (const Point end : {low, high}) {
    path.steps.push_back(move_to({end.x - whisker_end, end.y}));
    path.steps.push_back(line_to({end.x + whisker_end, end.y}));
  }
  drawn.emplace_back(std::move(path));
}

Label label_at(Point at, const std::string& text, Anchor anchor, bool strong) {
  Label label;
  label.at = at;
  label.text = text;
  label.size = chart_letters;
  label.anchor = anchor;
  label.strong = strong;
  return label;
}

Drawn drawn(const Plot& plot, const ChartPoints& points) {
  Drawn all;
  for (const ChartPoint& point : points.points) {
    if (!is_drawn(point)) continue;
    add_whisker(all, plot, point.x, point.within);
    const double radius = point.strong ? 1.1 : 0.8;
    const Ink fill = point.strong ? Ink::black : Ink::white;
    const Point at = in_plot(plot, point.x, point.y);
    all.emplace_back(ellipse(at, radius, radius, fill, {Ink::black, 0.35, Dash::solid}));
    if (point.label.empty()) continue;
    // Towards the middle, where there is room.
    const bool to_right = at.x < (plot.area.left + plot.area.right) / 2;
    const double gap = radius + label_gap;
    const Point beside{to_right ? at.x + gap : at.x - gap, at.y + chart_letters * 0.36};
    all.emplace_back(
        label_at(beside, point.label, to_right ? Anchor::start : Anchor::end, point.strong));
  }
  return all;
}

/// A gap in the values is a gap in the line.
Path traced(const Plot& plot, const std::vector<Point>& values, Course course) {
  Path path;
  bool goes_on = false;
  Point last;
  for (const Point& value : values) {
    if (!is_drawn(value)) {
      goes_on = false;
      continue;
    }
    const Point at = in_plot(plot, value.x, value.y);
    if (goes_on && course == Course::steps) path.steps.push_back(line_to({at.x, last.y}));
    path.steps.push_back(goes_on ? line_to(at) : move_to(at));
    goes_on = true;
    last = at;
  }
  return path;
}

/// Dotted, so that a band is told from the lines of others, also after a bad copier.
void add_band(Drawn& drawn, const Plot& plot, const ChartLine& line) {
  std::vector<Point> least;
  std::vector<Point> most;
  for (std::size_t i = 0; i < line.values.size(); ++i) {
    constexpr double gap = std::numeric_limits<double>::quiet_NaN();
    const std::optional<Range> within = within_of(line, i);
    least.push_back({line.values[i].x, within ? within->least : gap});
    most.push_back({line.values[i].x, within ? within->most : gap});
  }
  for (const std::vector<Point>& edge : {least, most}) {
    Path path = traced(plot, edge, line.course);
    path.stroke = {Ink::black, 0.3, Dash::dotted};
    if (!path.steps.empty()) drawn.emplace_back(std::move(path));
  }
}

Drawn drawn(const Plot& plot, const ChartLine& line) {
  Drawn all;
  if (!line.within.empty()) add_band(all, plot, line);
  Path path = traced(plot, line.values, line.course);
  path.stroke = {Ink::black, line.strong ? 0.8 : thin.width, line.dash};
  if (!path.steps.empty()) all.emplace_back(std::move(path));
  return all;
}

Drawn drawn(const Plot& plot, const ChartBars& bars) {
  Drawn all;
  for (const ChartBar& bar : bars.bars) {
    if (!is_drawn(bar)) continue;
    const Point a = in_plot(plot, bar.x - bar.width / 2, 0);
    const Point b = in_plot(plot, bar.x + bar.width / 2, bar.value);
    const Area area{a.x, std::min(a.y, b.y), b.x, std::max(a.y, b.y)};
    for (Path& path : hatched(area, bar.hatch)) all.emplace_back(std::move(path));
    add_whisker(all, plot, bar.x, bar.within);
    if (bar.label.empty()) continue;
    double top = area.top;
    if (bar.within && is_finite(*bar.within)) {
      top = std::min(top, in_plot(plot, bar.x, bar.within->most).y);
    }
    all.emplace_back(label_at({(a.x + b.x) / 2, top - 1.6}, bar.label, Anchor::middle, false));
  }
  return all;
}

struct LineEnd {
  Point at;
  const ChartLine* line = nullptr;
};

std::vector<LineEnd> ends_of(const Plot& plot, const std::vector<ChartMark>& marks) {
  std::vector<LineEnd> ends;
  for (const ChartMark& mark : marks) {
    const auto* line = std::get_if<ChartLine>(&mark);
    if (line == nullptr || line->label.empty()) continue;
    const auto last = std::find_if(line->values.rbegin(), line->values.rend(),
                                   [](Point value) { return is_drawn(value); });
    if (last != line->values.rend()) ends.push_back({in_plot(plot, last->x, last->y), line});
  }
  return ends;
}

/// Beside the ends of the lines, moved apart where they would lie over each other.
void add_line_labels(Drawn& drawn, const Plot& plot, const std::vector<ChartMark>& marks) {
  const std::vector<LineEnd> ends = ends_of(plot, marks);
  if (ends.empty()) return;
  std::vector<double> wanted;
  wanted.reserve(ends.size());
  for (const LineEnd& end : ends) wanted.push_back(end.at.y + chart_letters * 0.36);
  const ColumnRoom column{plot.area.top + chart_letters * 0.7, plot.area.bottom,
                          chart_letters * 1.2};
  const std::vector<double> places = apart(wanted, column);
  for (std::size_t i = 0; i < ends.size(); ++i) {
    drawn.emplace_back(label_at({ends[i].at.x + label_gap, places[i]}, ends[i].line->label,
                                Anchor::start, ends[i].line->strong));
  }
}

}  // namespace

Point in_plot(const Plot& plot, double x, double y) {
  const Area& area = plot.area;
  const double right = (x - plot.x.least) / (plot.x.most - plot.x.least);
  const double up = (y - plot.y.least) / (plot.y.most - plot.y.least);
  return {area.left + right * (area.right - area.left),
          area.bottom - up * (area.bottom - area.top)};
}

std::optional<Range> united(const std::optional<Range>& a, const std::optional<Range>& b) {
  std::optional<Range> range = a;
  widen(range, b);
  return range;
}

std::optional<Range> range_along_x(const std::vector<ChartMark>& marks) {
  std::optional<Range> range;
  for (const ChartMark& mark : marks) {
    range = united(range, std::visit([](const auto& one) { return along_x(one); }, mark));
  }
  return range;
}

std::optional<Range> range_along_y(const std::vector<ChartMark>& marks) {
  std::optional<Range> range;
  for (const ChartMark& mark : marks) {
    range = united(range, std::visit([](const auto& one) { return along_y(one); }, mark));
  }
  return range;
}

std::vector<DrawingMark> plotted(const Plot& plot, const std::vector<ChartMark>& marks) {
  Drawn all;
  for (const ChartMark& mark : marks) {
    Drawn of_mark = std::visit([&](const auto& one) { return drawn(plot, one); }, mark);
    for (DrawingMark& one : of_mark) all.push_back(std::move(one));
  }
  add_line_labels(all, plot, marks);
  return all;
}

double room_for_labels(const std::vector<ChartMark>& marks) {
  double room = 0;
  for (const ChartMark& mark : marks) {
    const auto* line = std::get_if<ChartLine>(&mark);
    if (line == nullptr || line->label.empty()) continue;
    room = std::max(room, label_gap + drawn_width(line->label, chart_letters));
  }
  return room;
}

}  // namespace evenclaw
