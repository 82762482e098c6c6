#include <algorithm>
#include <utility>

#include "core/paper/long_label.hpp"
#include "report/pdf/block_strips.hpp"
#include "report/pdf/page_column.hpp"

namespace evenclaw {

namespace {

constexpr double stroke = 0.5;
constexpr double edge = stroke + 2.5;
constexpr Across inside{edge, column_width - 2 * edge};
constexpr double name_width = 11;
constexpr double tick_width = 17;
constexpr double cells_left = inside.left + name_width + tick_width;
constexpr double cells_width = inside.width - name_width - tick_width;
constexpr double row_height = 10;
constexpr double tick_size = 6;

/// Its name and a line to write on, as high as a hand in wet gloves needs.
void add_blank(Strip& strip, const std::string& name, const Across& across,
               Typesetter& typesetter) {
  TextStyle style;
  style.most_lines = 1;
  double left = across.left;
  for (SetLine& line : typesetter.lines({plain(name)}, style, across.width * 2 / 3)) {
    const double width = line.width;
    strip.pieces.emplace_back(PlacedLine{std::move(line), {left, strip.height - 1}});
    left += width + 1.5;
  }
  strip.pieces.emplace_back(
      rule({left, across.left + across.width - left}, strip.height - 0.2, 0.4, Ink::black));
}

Strips blanks(const std::vector<std::string>& names, const Across& across, Typesetter& typesetter) {
  if (names.empty()) return {};
  constexpr double gap = 4;
  const auto count = static_cast<double>(names.size());
  const double width = (across.width - gap * (count - 1)) / count;
  Strip strip;
  strip.height = 9;
  double left = across.left;
  for (const std::string& name : names) {
    add_blank(strip, name, {left, width}, typesetter);
    left += width + gap;
  }
  return {strip};
}

Strips label_strips(const WritingForm& form, const WritingItem& item, double width,
                    Typesetter& typesetter) {
  if (item.label.empty()) {
    Strip strip;
    strip.height = 11;
    add_blank(strip, form.label_head, {inside.left, width}, typesetter);
    return {strip};
  }
  TextStyle style;
  style.points = is_long_label(item.label) ? 14 : 24;
  style.strong = true;
  style.line = 1.1;
  return typesetter.strips({plain(item.label)}, style, {inside.left, width});
}

double widest_label(const WritingItem& item, Typesetter& typesetter) {
  if (item.label.empty()) return 62;
  TextStyle style;
  style.points = is_long_label(item.label) ? 14 : 24;
  style.strong = true;
  return std::clamp(typesetter.natural_width({plain(item.label)}, style), 24.0, 60.0);
}

Strips top_strips(const WritingForm& form, const WritingItem& item, Typesetter& typesetter) {
  constexpr double gap = 5;
  const double width = widest_label(item, typesetter);
  const Across beside_it{inside.left + width + gap, inside.width - width - gap};
  const Strips label = label_strips(form, item, width, typesetter);
  if (item.about.empty()) {
    return beside_on_baseline({label, blanks(form.before, beside_it, typesetter)});
  }
  TextStyle style;
  style.points = 12;
  style.line = 1.2;
  return below(beside_on_baseline({label, typesetter.strips(item.about, style, beside_it)}),
               blanks(form.before, inside, typesetter));
}

std::vector<Across> cells_of(const WritingForm& form) {
  int shares = 0;
  for (const WritingColumn& column : form.columns) shares += column.share;
  std::vector<Across> cells;
  double left = cells_left;
  for (const WritingColumn& column : form.columns) {
    const double width = shares > 0 ? cells_width * column.share / shares : 0;
    cells.push_back({left, width});
    left += width;
  }
  return cells;
}

Strips heads_strips(const WritingForm& form, const std::vector<Across>& cells,
                    Typesetter& typesetter) {
  TextStyle style;
  style.points = 9;
  style.strong = true;
  style.line = 1.1;
  std::vector<Strips> heads = {typesetter.strips({plain(form.tick_head)}, style,
                                                 {inside.left + name_width + 1, tick_width - 2})};
  for (std::size_t i = 0; i < cells.size(); ++i) {
    heads.push_back(typesetter.strips({plain(form.columns[i].head)}, style,
                                      {cells[i].left + 1, std::max(1.0, cells[i].width - 2)}));
  }
  Strips strips = beside(heads);
  strips.push_back(rule_below(inside, 0.3, 0.5, Ink::black));
  return with_gaps(std::move(strips), 1, 0);
}

Strips row_strips(const std::string& name, const std::vector<Across>& cells,
                  Typesetter& typesetter) {
  Strip grid;
  grid.height = row_height;
  const double box_left = inside.left + name_width + (tick_width - tick_size) / 2;
  const double box_top = (row_height - tick_size) / 2;
  grid.pieces.emplace_back(
      box({box_left, box_top, box_left + tick_size, box_top + tick_size}, 0.5));
  std::vector<double> edges = {inside.left + name_width};
  for (const Across& cell : cells) edges.push_back(cell.left);
  for (const double x : edges) {
    grid.pieces.emplace_back(line({x, 0}, {x, row_height}, {Ink::grey, 0.2, Dash::solid}));
  }
  TextStyle style;
  style.points = 15;
  style.strong = true;
  Strips names = typesetter.strips({plain(name)}, style, {inside.left + 1, name_width - 2});
  const double spare = row_height - height_of(names);
  if (spare > 0) names = padded(std::move(names), spare / 2, 0);
  Strips strips = beside({{grid}, names});
  strips.push_back(rule_below(inside, 0, 0.2, Ink::grey));
  return strips;
}

Strips item_strips(const WritingForm& form, const WritingItem& item, Typesetter& typesetter) {
  const std::vector<Across> cells = cells_of(form);
  Strips strips = top_strips(form, item, typesetter);
  strips = below(std::move(strips), heads_strips(form, cells, typesetter));
  for (const std::string& row : form.rows) {
    strips = below(std::move(strips), row_strips(row, cells, typesetter));
  }
  strips = below(std::move(strips), blanks(form.behind, inside, typesetter));
  const auto frame = std::make_shared<const Frame>(Frame{stroke, 1.5});
  for (Strip& strip : strips) strip.frame = frame;
  return with_gaps(kept_together(std::move(strips)), 0, 3);
}

}  // namespace

Strips writing_strips(const WritingForm& form, Typesetter& typesetter) {
  Strips all;
  for (const WritingItem& item : form.items) {
    all = below(std::move(all), item_strips(form, item, typesetter));
  }
  return all;
}

}  // namespace evenclaw
