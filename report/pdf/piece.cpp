#include "report/pdf/piece.hpp"

#include <algorithm>

namespace evenclaw {

namespace {

Extent extent(const PlacedLine& placed) {
  const SetLine& line = placed.line;
  return {placed.at.x, placed.at.y - line.ascent, placed.at.x + line.width,
          placed.at.y + line.descent};
}

void widen(Extent& extent, Point point) {
  extent.left = std::min(extent.left, point.x);
  extent.top = std::min(extent.top, point.y);
  extent.right = std::max(extent.right, point.x);
  extent.bottom = std::max(extent.bottom, point.y);
}

Extent extent(const Path& path) {
  Extent all;
  bool first = true;
  for (const PathStep& step : path.steps) {
    if (step.kind == StepKind::close) continue;
    if (first) all = {step.to.x, step.to.y, step.to.x, step.to.y};
    first = false;
    widen(all, step.to);
    if (step.kind != StepKind::curve) continue;
    widen(all, step.bend_1);
    widen(all, step.bend_2);
  }
  return all;
}

Extent extent(const PlacedDrawing& placed) {
  return {placed.at.x, placed.at.y, placed.at.x + placed.drawing.width * placed.scale,
          placed.at.y + placed.drawing.height * placed.scale};
}

void move(PlacedLine& placed, double x, double y) {
  placed.at = {placed.at.x + x, placed.at.y + y};
}

void move(Path& path, double x, double y) {
  Placement placement;
  placement.shift = {x, y};
  path.steps = placed(std::move(path.steps), placement);
}

void move(PlacedDrawing& placed, double x, double y) {
  placed.at = {placed.at.x + x, placed.at.y + y};
}

}  // namespace

Extent extent_of(const Piece& piece) {
  return std::visit([](const auto& one) { return extent(one); }, piece);
}

Piece moved(Piece piece, double x, double y) {
  std::visit([&](auto& one) { move(one, x, y); }, piece);
  return piece;
}

Path box(const Extent& extent, double stroke) {
  const double left = extent.left + stroke / 2;
  const double top = extent.top + stroke / 2;
  const double right = extent.right - stroke / 2;
  const double bottom = extent.bottom - stroke / 2;
  return {{move_to({left, top}), line_to({right, top}), line_to({right, bottom}),
           line_to({left, bottom}), close_path()},
          Ink::none,
          {Ink::black, stroke, Dash::solid}};
}

Path box_that_goes_on(const Extent& extent, double stroke) {
  const double left = extent.left + stroke / 2;
  const double top = extent.top + stroke / 2;
  const double right = extent.right - stroke / 2;
  return {{move_to({left, extent.bottom}), line_to({left, top}), line_to({right, top}),
           line_to({right, extent.bottom})},
          Ink::none,
          {Ink::black, stroke, Dash::solid}};
}

}  // namespace evenclaw
