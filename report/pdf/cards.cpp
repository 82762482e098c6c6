#include <utility>

#include "core/base/text.hpp"
#include "report/pdf/block_strips.hpp"
#include "report/pdf/page_column.hpp"

namespace evenclaw {

namespace {

constexpr std::size_t longest_large_label = 6;
constexpr double label_width = 24;
constexpr double gap = 5;
constexpr double figure_width = 25;
constexpr double term_width = 27;

TextStyle label_style(const std::string& label) {
  TextStyle style;
  style.points = is_long_label(label) ? 13 : 24;
  style.strong = true;
  style.line = 1.1;
  return style;
}

Strips term_strips(const TermLine& line, const Across& across, Typesetter& typesetter) {
  if (line.term.empty()) return typesetter.strips(line.runs, {}, across);
  TextStyle term_style;
  term_style.strong = true;
  const Across said{across.left + term_width + 2, across.width - term_width - 2};
  return beside({typesetter.strips({plain(line.term)}, term_style, {across.left, term_width}),
                 typesetter.strips(line.runs, {}, said)});
}

Strips said_strips(const Card& card, const Across& across, Typesetter& typesetter) {
  TextStyle head_style;
  head_style.points = 12;
  Strips said = with_gaps(padded(typesetter.strips(card.head, head_style, across), 0.6, 0), 0, 1);
  for (const TermLine& line : card.lines) {
    said = below(std::move(said), with_gaps(term_strips(line, across, typesetter), 0.6, 0));
  }
  return said;
}

}  // namespace

bool is_long_label(const std::string& label) {
  return character_count(label) > longest_large_label;
}

Strips card_strips(const Card& card, Typesetter& typesetter) {
  const double left = label_width + gap;
  const double right = card.figure ? column_width - figure_width - gap : column_width;
  const Across across{left, right - left};
  std::vector<Strips> columns = {
      typesetter.strips({plain(card.label)}, label_style(card.label), {0, label_width}),
      said_strips(card, across, typesetter)};
  if (card.figure) {
    columns.push_back(
        figure_strips(*card.figure, {column_width - figure_width, figure_width}, typesetter));
  }
  Strips strips = padded(beside(columns), 2, 2.5);
  return kept_together(ruled(std::move(strips), whole_column, 0.5, 0));
}

}  // namespace evenclaw
