// Charts of invented figures, for tests and to be looked at.
#pragma once

#include <algorithm>

#include "core/paper/chart.hpp"

namespace evenclaw::test {

/// Points with whiskers along words: one herd among others.
inline Chart herds_chart() {
  Chart chart;
  chart.title = "Hollow Meadow has more lame cows than most herds, and it is too early to say why";
  chart.method =
      "Cows that came lame out of cows looked at, last 90 days; 95 % intervals. Invented.";
  chart.x.words = {{1, "A"}, {2, "B"}, {3, "C"}, {4, "D"}, {5, "E"}};
  chart.x.name = "herd";
  chart.y = {"cows that came lame", "%", true};
  chart.marks = {ChartPoints{{{1, 8, Range{4, 15}},
                              {2, 11, Range{7, 17}},
                              {3, 12.5, Range{6, 22}},
                              {4, 14, Range{10, 19}},
                              {5, 21, Range{14, 30}, "Hollow Meadow", true}}}};
  return chart;
}

/// Steps of healing: this herd thick, others thin.
inline Chart healing_chart() {
  Chart chart;
  chart.title = "Half of the cows walk well after six weeks";
  chart.method = "Cows not yet healed, by days since the first call; 24 cows. Invented.";
  chart.x = {"days since the first call", ""};
  chart.y = {"not yet healed", "%", true};
  const auto fall = [](double by) {
    std::vector<Point> values;
    for (int week = 0; week <= 9; ++week) {
      values.push_back({7.0 * week, std::max(0.0, 100 - by * week)});
    }
    return values;
  };
  ChartLine own{fall(8.5), "this herd", true, Course::steps};
  for (std::size_t week = 0; week < own.values.size(); ++week) {
    const double half = std::min(15.0, 5 * static_cast<double>(week));
    const double value = own.values[week].y;
    own.within.push_back({std::max(0.0, value - half), std::min(100.0, value + half)});
  }
  chart.marks = {ChartLine{fall(5.5), "herd B", false, Course::steps},
                 ChartLine{fall(6), "herd C", false, Course::steps},
                 ChartLine{fall(10), "herd D", false, Course::steps, Dash::dashed}, own};
  return chart;
}

/// Names too long to stand beside each other.
inline Chart named_herds_chart() {
  Chart chart = herds_chart();
  chart.width = 80;
  chart.x.words = {
      {1, "Upper Yard"}, {2, "Mill Farm"}, {3, "Thornby"}, {4, "Long Reach"}, {5, "Hollow Meadow"}};
  return chart;
}

/// Groups told apart by hatching.
inline Chart groups_chart() {
  Chart chart;
  chart.title = "Heel horn erosion is found on hind feet";
  chart.method = "Cows with the lesion, out of 60. Invented.";
  chart.x.words = {{1, "LF"}, {2, "RF"}, {3, "LH"}, {4, "RH"}};
  chart.y = {"cows", "", true};
  chart.marks = {ChartBars{{{0.8, 3, 0.36, Hatch::open},
                            {1.2, 5, 0.36, Hatch::rising},
                            {1.8, 2, 0.36, Hatch::open},
                            {2.2, 4, 0.36, Hatch::rising},
                            {2.8, 14, 0.36, Hatch::open, Range{9, 20}, "slight"},
                            {3.2, 9, 0.36, Hatch::rising, Range{5, 14}, "plain"},
                            {3.8, 12, 0.36, Hatch::crossed},
                            {4.2, 7, 0.36, Hatch::filled}}}};
  return chart;
}

/// The same few lines for several herds, over one pair of axes.
inline SmallMultiples herd_multiples() {
  SmallMultiples charts;
  charts.title = "Lameness fell in four of six herds over the year";
  charts.method = "Cows that came lame out of cows looked at, by visit. Invented.";
  for (int herd = 0; herd < 6; ++herd) {
    Chart chart;
    chart.title = std::string("Herd ") + static_cast<char>('A' + herd);
    chart.x = {"month", ""};
    chart.y = {"cows that came lame", "%", true};
    ChartLine line;
    line.strong = true;
    for (int month = 1; month <= 12; ++month) {
      const double fall = herd < 4 ? -0.9 : 0.4;
      line.values.push_back({double(month), 18 + herd + fall * month + (month * 7 % 5)});
    }
    chart.marks = {line};
    charts.charts.push_back(chart);
  }
  return charts;
}

}  // namespace evenclaw::test
