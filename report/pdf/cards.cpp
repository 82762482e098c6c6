#include <utility>

#include "core/paper/long_label.hpp"
#include "report/pdf/block_strips.hpp"
#include "report/pdf/page_column.hpp"

namespace evenclaw {

namespace {

constexpr double cow_width = 32;
constexpr double gap = 3;
constexpr double figure_width = 27;
constexpr double line_height = 1.25;  // times the size: a list of many cows is to stay short

TextStyle card_style() {
  TextStyle style;
  style.line = line_height;
  return style;
}

/// Her number, and below it why she came; that stands beside it when nothing else is to be said.
Strips who_strips(const Card& card, Typesetter& typesetter) {
  constexpr Across across{0, cow_width};
  TextStyle label_style;
  label_style.points = is_long_label(card.label) ? 11 : 18;
  label_style.strong = true;
  label_style.line = 1.1;
  const Runs beneath = card.lines.empty() ? Runs{} : card.head;
  return below(typesetter.strips({plain(card.label)}, label_style, across),
               typesetter.strips(beneath, card_style(), across));
}

Strips said_strips(const Card& card, const Across& across, Typesetter& typesetter) {
  if (card.lines.empty()) return padded(typesetter.strips(card.head, card_style(), across), 0.8, 0);
  Strips said;
  for (const TermLine& line : card.lines) {
    Runs runs = line.runs;
    if (!line.term.empty()) runs.insert(runs.begin(), plain(line.term + ". "));
    said = below(std::move(said), with_gaps(typesetter.strips(runs, card_style(), across), 0.3, 0));
  }
  return padded(std::move(said), 0.8, 0);
}

}  // namespace

Strips card_strips(const Card& card, Typesetter& typesetter) {
  const double left = cow_width + gap;
  const double right = card.figure ? column_width - figure_width - gap : column_width;
  const Across across{left, right - left};
  std::vector<Strips> columns = {who_strips(card, typesetter),
                                 said_strips(card, across, typesetter)};
  if (card.figure) {
    const Across across_figure{column_width - figure_width, figure_width};
    columns.push_back(with_gaps(figure_strips(*card.figure, across_figure, typesetter), 0.5, 0));
  }
  Strips strips = padded(beside(columns), 0.8, 0.8);
  return kept_together(ruled(std::move(strips), whole_column, 0.3, 0));
}

}  // namespace evenclaw
