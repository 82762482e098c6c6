#include "core/paper/chart.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/paper/axis_words.hpp"
#include "core/paper/chart_ticks.hpp"
#include "core/paper/drawn_words.hpp"
#include "core/paper/plot.hpp"

namespace evenclaw {

namespace {

constexpr double title_letters = 4.2;
constexpr double method_letters = 2.6;
constexpr double line_height = 1.3;  // times the size of the letters
constexpr double tick_length = 1.2;
constexpr double tick_gap = 1;
constexpr double gap_between = 8;  // of charts beside each other
constexpr Stroke axis_stroke{Ink::black, 0.35, Dash::solid};
constexpr Stroke grid_stroke{Ink::grey, 0.12, Dash::solid};

/// An axis once it is known what it has to cover.
struct Ruler {
  std::string title;
  std::vector<Tick> ticks;
  Range range;
  bool has_names = false;
};

std::string title_of(const Axis& axis) {
  if (axis.unit.empty() || axis.name.empty()) return axis.name + axis.unit;
  return axis.name + ", " + axis.unit;
}

Ruler ruler_of(const Axis& axis, std::optional<Range> covered, int about) {
  Ruler ruler;
  ruler.title = title_of(axis);
  if (axis.words.empty()) {
    if (axis.from_zero) covered = united(covered, Range{0, 0});
    ruler.ticks = nice_ticks(covered.value_or(Range{0, 1}), about);
    ruler.range = {ruler.ticks.front().value, ruler.ticks.back().value};
    return ruler;
  }
  ruler.has_names = true;
  for (const AxisWord& word : axis.words) {
    if (!std::isfinite(word.at)) continue;
    ruler.ticks.push_back({word.at, word.word});
    covered = united(covered, Range{word.at - 0.5, word.at + 0.5});
  }
  ruler.range = covered.value_or(Range{0, 1});
  if (ruler.range.most <= ruler.range.least) ruler.range.most = ruler.range.least + 1;
  return ruler;
}

struct Rulers {
  Ruler x;
  Ruler y;
};

Label words_at(Point at, std::string text, double size, Anchor anchor = Anchor::start) {
  Label label;
  label.at = at;
  label.text = std::move(text);
  label.size = size;
  label.anchor = anchor;
  return label;
}

using Marks = std::vector<DrawingMark>;

/// Adds words in lines below each other from `top` on and says where they end.
double add_words(Marks& marks, const std::string& text, const Label& look, double width) {
  double y = look.at.y;
  for (const std::string& line : drawn_lines(text, look.size, width)) {
    Label label = look;
    label.text = line;
    label.at.y = y + look.size * 0.95;
    marks.emplace_back(std::move(label));
    y += look.size * line_height;
  }
  return y;
}

AxisWordsSet words_below(const Ruler& ruler, const Area& area) {
  return set_below(ruler.ticks, ruler.has_names, ruler.range, area.right - area.left,
                   chart_letters);
}

/// From the axis down to below its words.
double room_below(const Ruler& ruler, const Area& area) {
  return tick_length + tick_gap + words_below(ruler, area).room;
}

void add_x_axis(Marks& marks, const Plot& plot, const Ruler& ruler) {
  const Area& area = plot.area;
  marks.emplace_back(line({area.left, area.bottom}, {area.right, area.bottom}, axis_stroke));
  for (const Tick& tick : ruler.ticks) {
    const double x = in_plot(plot, tick.value, plot.y.least).x;
    marks.emplace_back(line({x, area.bottom}, {x, area.bottom + tick_length}, axis_stroke));
  }
  const AxisWordsSet words = words_below(ruler, area);
  const double top = area.bottom + tick_length + tick_gap;
  for (const Tick& tick : words.shown) {
    const double x = in_plot(plot, tick.value, plot.y.least).x;
    const Point below{x, top + chart_letters};
    const Point turned{x + chart_letters * 0.36, top};
    Label label = words_at(words.are_turned ? turned : below, tick.text, chart_letters,
                           words.are_turned ? Anchor::end : Anchor::middle);
    label.turned = words.are_turned;
    marks.emplace_back(std::move(label));
  }
}

/// Thin lines across carry the eye; the numbers stand left of them when `numbered`.
void add_y_axis(Marks& marks, const Plot& plot, const Ruler& ruler, bool numbered) {
  const Area& area = plot.area;
  for (const Tick& tick : ruler.ticks) {
    const double y = in_plot(plot, plot.x.least, tick.value).y;
    marks.emplace_back(line({area.left, y}, {area.right, y}, grid_stroke));
    if (!numbered) continue;
    marks.emplace_back(words_at({area.left - tick_gap, y + chart_letters * 0.36}, tick.text,
                                chart_letters, Anchor::end));
  }
}

double room_for_numbers(const Ruler& ruler) {
  double room = 0;
  for (const Tick& tick : ruler.ticks) {
    room = std::max(room, drawn_width(tick.text, chart_letters));
  }
  return room + tick_gap;
}

Rulers rulers_of(const Axis& x, const Axis& y, const std::vector<Chart>& charts) {
  std::optional<Range> along_x;
  std::optional<Range> along_y;
  for (const Chart& chart : charts) {
    along_x = united(along_x, range_along_x(chart.marks));
    along_y = united(along_y, range_along_y(chart.marks));
  }
  return {ruler_of(x, along_x, 5), ruler_of(y, along_y, 4)};
}

/// Axes and marks of one chart in the given area.
void add_plot(Marks& marks, const Area& area, const Rulers& rulers, const Chart& chart,
              bool numbered) {
  const Plot plot{area, rulers.x.range, rulers.y.range};
  add_y_axis(marks, plot, rulers.y, numbered);
  for (DrawingMark& mark : plotted(plot, chart.marks)) marks.push_back(std::move(mark));
  add_x_axis(marks, plot, rulers.x);
}

/// Adds the name of the y axis above it and says where the plot begins.
double add_y_name(Marks& marks, const Ruler& ruler, double y, double width) {
  const double half_a_number = chart_letters / 2 + 0.6;
  if (ruler.title.empty()) return y + half_a_number;
  return add_words(marks, ruler.title, words_at({0, y}, {}, chart_letters), width) + half_a_number;
}

/// The name of the x axis ends where the axis does.
double add_x_name(Marks& marks, const Ruler& ruler, const Area& area) {
  const double y = area.bottom + room_below(ruler, area) + chart_letters * 0.4;
  if (ruler.title.empty()) return y;
  const Label look = words_at({area.right, y}, {}, chart_letters, Anchor::end);
  return add_words(marks, ruler.title, look, area.right);
}

double add_title(Marks& marks, const std::string& title, double width) {
  Label look = words_at({0, 0}, {}, title_letters);
  look.strong = true;
  const double end = add_words(marks, title, look, width);
  return end > 0 ? end + 1 : end;
}

Drawing finished(Marks marks, const std::string& method, double width, double bottom) {
  const Label look = words_at({0, bottom + 1.5}, {}, method_letters);
  const double end = method.empty() ? bottom : add_words(marks, method, look, width);
  Drawing drawing;
  drawing.width = width;
  drawing.height = end + 0.5;
  drawing.marks = std::move(marks);
  return drawing;
}

/// Where the plots of several charts lie: the first one, and how far it is to the next.
struct Grid {
  Area first;
  std::size_t columns = 1;
  double step_across = 0;
  double step_down = 0;
};

Area area_of(const Grid& grid, std::size_t index) {
  const double x = static_cast<double>(index % grid.columns) * grid.step_across;
  const auto row = index / grid.columns;
  const double y = static_cast<double>(row) * grid.step_down;
  return {grid.first.left + x, grid.first.top + y, grid.first.right + x, grid.first.bottom + y};
}

Grid grid_of(const SmallMultiples& charts, const Rulers& rulers, double top) {
  double labels = 0;
  for (const Chart& chart : charts.charts) {
    labels = std::max(labels, room_for_labels(chart.marks));
  }
  Grid grid;
  grid.columns = static_cast<std::size_t>(std::max(1, charts.columns));
  const auto columns = static_cast<double>(grid.columns);
  const double left = room_for_numbers(rulers.y);
  const double between = std::max(labels + 1, gap_between);
  grid.step_across = std::max(between + 1, (charts.width - left) / columns);
  const double title_room = chart_letters * line_height + 1;
  grid.first = {left, top + title_room, left + grid.step_across - between,
                top + title_room + charts.height};
  grid.step_down = title_room + charts.height + room_below(rulers.x, grid.first) + gap_between;
  return grid;
}

std::string said_of(const std::string& title, const std::string& method) {
  return method.empty() ? title : title + ' ' + method;
}

}  // namespace

Drawing to_drawing(const Chart& chart) {
  Marks marks;
  const Rulers rulers = rulers_of(chart.x, chart.y, {chart});
  const double top =
      add_y_name(marks, rulers.y, add_title(marks, chart.title, chart.width), chart.width);
  Area area;
  area.left = room_for_numbers(rulers.y);
  area.top = top;
  area.right = std::max(area.left + 1, chart.width - std::max(room_for_labels(chart.marks), 3.0));
  area.bottom = top + chart.height;
  add_plot(marks, area, rulers, chart, true);
  const double bottom = add_x_name(marks, rulers.x, area);
  return finished(std::move(marks), chart.method, chart.width, bottom);
}

Drawing to_drawing(const SmallMultiples& charts) {
  Marks marks;
  // What the axes are called is said by the first of them; all cover what any of them shows.
  const Axis x = charts.charts.empty() ? Axis{} : charts.charts.front().x;
  const Axis y = charts.charts.empty() ? Axis{} : charts.charts.front().y;
  const Rulers rulers = rulers_of(x, y, charts.charts);
  const double top =
      add_y_name(marks, rulers.y, add_title(marks, charts.title, charts.width), charts.width);
  const Grid grid = grid_of(charts, rulers, top);
  for (std::size_t i = 0; i < charts.charts.size(); ++i) {
    const Area area = area_of(grid, i);
    Label title = words_at({area.left, area.top - 1.5}, charts.charts[i].title, chart_letters);
    title.strong = true;
    marks.emplace_back(std::move(title));
    add_plot(marks, area, rulers, charts.charts[i], i % grid.columns == 0);
  }
  const std::size_t last = charts.charts.empty() ? 0 : charts.charts.size() - 1;
  Area corner = area_of(grid, last / grid.columns * grid.columns);
  corner.right = area_of(grid, std::min(last, grid.columns - 1)).right;
  const double bottom = add_x_name(marks, rulers.x, corner);
  return finished(std::move(marks), charts.method, charts.width, bottom);
}

Figure to_figure(const Chart& chart) {
  return {to_drawing(chart), said_of(chart.title, chart.method)};
}

Figure to_figure(const SmallMultiples& charts) {
  return {to_drawing(charts), said_of(charts.title, charts.method)};
}

}  // namespace evenclaw
