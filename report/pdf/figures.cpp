#include <algorithm>
#include <utility>

#include "report/pdf/block_strips.hpp"
#include "report/pdf/page_column.hpp"

namespace evenclaw {

namespace {

constexpr double highest_figure = column_height * 0.75;

PlacedDrawing placed_drawing(const Drawing& drawing, double scale, Typesetter& typesetter) {
  PlacedDrawing placed;
  placed.drawing = drawing;
  placed.scale = scale;
  for (const DrawingMark& mark : drawing.marks) {
    const auto* label = std::get_if<Label>(&mark);
    if (label == nullptr) continue;
    TextStyle style;
    style.points = label->size / mm_per_point;
    style.strong = label->strong;
    const auto lines = typesetter.lines({plain(label->text)}, style, -1);
    placed.labels.push_back(lines.empty() ? SetLine{} : lines.front());
  }
  return placed;
}

}  // namespace

Strips figure_strips(const Figure& figure, const Across& across, Typesetter& typesetter) {
  Strips strips;
  const Drawing& drawing = figure.drawing;
  if (drawing.width > 0 && drawing.height > 0) {
    const double scale =
        std::min({1.0, across.width / drawing.width, highest_figure / drawing.height});
    PlacedDrawing placed = placed_drawing(drawing, scale, typesetter);
    placed.at = {across.left, 0};
    Strip strip;
    strip.height = drawing.height * scale;
    strip.pieces.emplace_back(std::move(placed));
    strips.push_back(std::move(strip));
  }
  TextStyle style;
  style.points = 10;
  style.quiet = true;
  strips = below(std::move(strips), typesetter.strips({plain(figure.caption)}, style, across));
  return kept_together(with_gaps(std::move(strips), 2, 2));
}

}  // namespace evenclaw
