#include "report/pdf/strip.hpp"

#include <algorithm>
#include <iterator>
#include <utility>

namespace evenclaw {

namespace {

constexpr double touching = 1e-6;

// So little is not parted: read column by column it makes sense to those who search or copy it.
constexpr double low_strip = 60;

// Columns whose lines never end together make one strip of all; beyond this height it would not
// fit a page, and their lines are put side by side one by one.
constexpr double highest_strip = 120;

/// Where a strip of a column would lie if its column stood alone.
struct Interval {
  double top = 0;
  double bottom = 0;
  std::size_t column = 0;
  const Strip* strip = nullptr;
};

std::vector<Interval> intervals_of(const Strips& strips, std::size_t column = 0) {
  std::vector<Interval> intervals;
  double y = 0;
  double gap = 0;
  for (const Strip& strip : strips) {
    y += std::max(gap, strip.gap_before);
    intervals.push_back({y, y + strip.height, column, &strip});
    y += strip.height;
    gap = strip.gap_after;
  }
  return intervals;
}

void put_into(Strip& into, const Strip& from, double y) {
  for (const Piece& piece : from.pieces) into.pieces.push_back(moved(piece, 0, y));
}

/// One strip of them all, read column by column; `end` is where the one above it ends.
Strip united(std::vector<Interval> intervals, double end) {
  Strip strip;
  double top = intervals.front().top;
  for (const Interval& one : intervals) top = std::min(top, one.top);
  std::stable_sort(intervals.begin(), intervals.end(),
                   [](const Interval& a, const Interval& b) { return a.column < b.column; });
  for (const Interval& one : intervals) {
    put_into(strip, *one.strip, one.top - top);
    strip.height = std::max(strip.height, one.bottom - top);
  }
  strip.gap_before = std::max(0.0, top - end);
  return strip;
}

Strips merged(std::vector<Interval> intervals) {
  std::stable_sort(intervals.begin(), intervals.end(),
                   [](const Interval& a, const Interval& b) { return a.top < b.top; });
  Strips strips;
  std::vector<Interval> group;
  double end = 0;  // of the strips so far
  double bottom = 0;
  for (const Interval& next : intervals) {
    if (!group.empty() && next.top >= bottom - touching) {
      strips.push_back(united(std::exchange(group, {}), end));
      end = bottom;
    }
    bottom = std::max(bottom, next.bottom);
    group.push_back(next);
  }
  if (!group.empty()) strips.push_back(united(std::move(group), end));
  return strips;
}

Strips line_by_line(const std::vector<Strips>& columns) {
  std::size_t most = 0;
  for (const Strips& column : columns) most = std::max(most, column.size());
  Strips strips(most);
  for (const Strips& column : columns) {
    for (std::size_t i = 0; i < column.size(); ++i) {
      put_into(strips[i], column[i], 0);
      strips[i].height = std::max(strips[i].height, column[i].height);
      strips[i].gap_before = std::max(strips[i].gap_before, column[i].gap_before);
    }
  }
  return strips;
}

double first_baseline(const Strips& column) {
  if (column.empty()) return 0;
  for (const Piece& piece : column.front().pieces) {
    if (const auto* line = std::get_if<PlacedLine>(&piece)) {
      return column.front().gap_before + line->at.y;
    }
  }
  return 0;
}

}  // namespace

Strips kept_together(Strips strips) {
  for (std::size_t i = 0; i + 1 < strips.size(); ++i) strips[i].with_next = true;
  return strips;
}

Strips below(Strips first, Strips second) {
  std::move(second.begin(), second.end(), std::back_inserter(first));
  return first;
}

Strips beside(const std::vector<Strips>& columns) {
  std::vector<Interval> intervals;
  for (std::size_t i = 0; i < columns.size(); ++i) {
    const auto of_column = intervals_of(columns[i], i);
    intervals.insert(intervals.end(), of_column.begin(), of_column.end());
  }
  double bottom = 0;
  for (const Interval& one : intervals) bottom = std::max(bottom, one.bottom);
  if (!intervals.empty() && bottom <= low_strip) {
    return {united(std::move(intervals), 0)};
  }
  Strips strips = merged(std::move(intervals));
  const bool all_fit = std::all_of(strips.begin(), strips.end(), [](const Strip& strip) {
    return strip.height <= highest_strip;
  });
  return all_fit ? strips : line_by_line(columns);
}

Strips beside_on_baseline(std::vector<Strips> columns) {
  double lowest = 0;
  for (const Strips& column : columns) lowest = std::max(lowest, first_baseline(column));
  for (Strips& column : columns) {
    const double baseline = first_baseline(column);
    if (baseline > 0) column.front().gap_before += lowest - baseline;
  }
  return beside(columns);
}

double height_of(const Strips& strips) {
  const auto intervals = intervals_of(strips);
  return intervals.empty() ? 0 : intervals.back().bottom;
}

Strips indented(Strips strips, double by) {
  for (Strip& strip : strips) {
    for (Piece& piece : strip.pieces) piece = moved(std::move(piece), by, 0);
  }
  return strips;
}

Strips padded(Strips strips, double above, double below) {
  if (strips.empty()) return strips;
  Strip& first = strips.front();
  for (Piece& piece : first.pieces) piece = moved(std::move(piece), 0, above);
  first.height += above;
  strips.back().height += below;
  return strips;
}

}  // namespace evenclaw
