#include <algorithm>
#include <utility>

#include "report/pdf/block_strips.hpp"
#include "report/pdf/column_widths.hpp"
#include "report/pdf/page_column.hpp"

namespace evenclaw {

namespace {

constexpr double gap_beside = 4;  // right of every cell
constexpr double gap_above = 0.9;
// A first cell narrower than this is not broken: it names the row.
constexpr double widest_unbroken_name = 60;

TextStyle head_style(const TableColumn& column) {
  TextStyle style;
  style.quiet = true;
  style.align = column.align;
  return style;
}

TextStyle cell_style(const Table& table, std::size_t column) {
  TextStyle style;
  style.align = table.columns[column].align;
  style.strong = column == 0;
  const bool is_large = column == 0 && table.head == RowHead::number;
  if (is_large) {
    style.points = 14;
    style.line = 1.2;
  }
  return style;
}

/// As many cells as there are columns.
std::vector<Runs> cells_of(const Table& table, std::vector<Runs> row) {
  row.resize(table.columns.size());
  return row;
}

std::vector<Across> columns_of(const Table& table, Typesetter& typesetter) {
  std::vector<ColumnNeed> needs;
  for (std::size_t i = 0; i < table.columns.size(); ++i) {
    const TableColumn& column = table.columns[i];
    const Runs head = {plain(column.head)};
    ColumnNeed need{typesetter.widest_word(head, head_style(column)),
                    typesetter.natural_width(head, head_style(column))};
    const TextStyle style = cell_style(table, i);
    for (const std::vector<Runs>& row : table.rows) {
      if (i >= row.size()) continue;
      const double most = typesetter.natural_width(row[i], style);
      const bool unbroken = i == 0 && most <= widest_unbroken_name;
      const double least = unbroken ? most : typesetter.widest_word(row[i], style);
      need = {std::max(need.least, least), std::max(need.most, most)};
    }
    needs.push_back({need.least + gap_beside, need.most + gap_beside});
  }
  std::vector<Across> columns;
  double left = 0;
  for (const double width : column_widths(needs, column_width)) {
    columns.push_back({left, std::max(1.0, width - gap_beside)});
    left += width;
  }
  return columns;
}

Strips head_strips(const Table& table, const std::vector<Across>& columns, Typesetter& typesetter) {
  std::vector<Strips> cells;
  for (std::size_t i = 0; i < columns.size(); ++i) {
    const TableColumn& column = table.columns[i];
    cells.push_back(typesetter.strips({plain(column.head)}, head_style(column), columns[i]));
  }
  Strips strips = beside(cells);
  if (strips.empty()) return strips;
  strips.push_back(rule_below(whole_column, gap_above, 0.5, Ink::black));
  return kept_together(std::move(strips));
}

Strips row_strips(const Table& table, const std::vector<Runs>& row,
                  const std::vector<Across>& columns, Typesetter& typesetter) {
  std::vector<Strips> cells;
  const std::vector<Runs> all = cells_of(table, row);
  for (std::size_t i = 0; i < columns.size(); ++i) {
    cells.push_back(typesetter.strips(all[i], cell_style(table, i), columns[i]));
  }
  Strips strips = padded(beside_on_baseline(cells), gap_above, 0);
  strips.push_back(rule_below(whole_column, gap_above, 0.2, Ink::grey));
  return kept_together(std::move(strips));
}

}  // namespace

Strips table_strips(const Table& table, Typesetter& typesetter) {
  TextStyle caption_style;
  caption_style.strong = true;
  Strips all = typesetter.strips({plain(table.caption)}, caption_style, whole_column);
  const std::vector<Across> columns = columns_of(table, typesetter);
  const auto head = std::make_shared<const Strips>(head_strips(table, columns, typesetter));
  all = below(std::move(all), *head);
  for (Strip& strip : all) strip.with_next = true;
  if (table.rows.empty() && !all.empty()) all.back().with_next = false;
  for (std::size_t i = 0; i < table.rows.size(); ++i) {
    Strips strips = row_strips(table, table.rows[i], columns, typesetter);
    for (Strip& strip : strips) strip.head = head;
    // Neither the first nor the last row stands on a page without another.
    const bool has_next = i + 1 < table.rows.size();
    const bool stays = has_next && (i == 0 || i + 2 == table.rows.size());
    if (stays && !strips.empty()) strips.back().with_next = true;
    all = below(std::move(all), std::move(strips));
  }
  return with_gaps(std::move(all), 2, 2);
}

}  // namespace evenclaw
