#include <algorithm>
#include <utility>

#include "report/pdf/block_strips.hpp"
#include "report/pdf/page_column.hpp"

namespace evenclaw {

namespace {

/// One after another, as many on a line as it holds.
Strips fact_strips(const std::vector<Fact>& facts, const Across& across, Typesetter& typesetter) {
  constexpr double gap = 7;
  Strips all;
  std::vector<Strips> on_line;
  double left = across.left;
  for (const Fact& fact : facts) {
    const Runs runs = {quiet(fact.term + "  "), strong(fact.value)};
    const double width = std::min(typesetter.natural_width(runs, {}) + 0.1, across.width);
    if (!on_line.empty() && left + width > across.left + across.width) {
      all = below(std::move(all), beside(on_line));
      on_line.clear();
      left = across.left;
    }
    on_line.push_back(typesetter.strips(runs, {}, {left, width}));
    left += width + gap;
  }
  return below(std::move(all), beside(on_line));
}

}  // namespace

Strips document_head_strips(const Document& document, Typesetter& typesetter) {
  constexpr double gap = 6;
  Across across = whole_column;
  Strips mark;
  if (document.mark) {
    const double width = std::min(document.mark->drawing.width, column_width / 3);
    mark = figure_strips(*document.mark, {column_width - width, width}, typesetter);
    mark = with_gaps(std::move(mark), 0, 0);
    across.width -= width + gap;
  }
  TextStyle kind_style;
  kind_style.points = 12;
  TextStyle title_style;
  title_style.points = 24;
  title_style.strong = true;
  title_style.line = 1.15;
  Strips said = typesetter.strips({plain(document.kind)}, kind_style, across);
  said = below(std::move(said), typesetter.strips({plain(document.title)}, title_style, across));
  said = below(std::move(said), with_gaps(fact_strips(document.facts, across, typesetter), 2, 0));
  // The mark stands on the rule, as what is said does.
  const double spare = height_of(said) - height_of(mark);
  if (spare > 0) mark = with_gaps(std::move(mark), spare, 0);
  if (spare < 0) said = with_gaps(std::move(said), -spare, 0);
  Strips strips = beside({said, mark});
  if (strips.empty()) return strips;
  strips.push_back(rule_below(whole_column, 3, 1, Ink::black));
  for (Strip& strip : strips) strip.with_next = true;
  return with_gaps(std::move(strips), 0, 5);
}

}  // namespace evenclaw
