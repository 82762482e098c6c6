#include <utility>

#include "core/paper/long_label.hpp"
#include "report/pdf/block_strips.hpp"
#include "report/pdf/page_column.hpp"

namespace evenclaw {

namespace {

constexpr double who_width = 20;
constexpr double content_left = 22;
constexpr double box_size = 6;
constexpr double text_left = content_left + box_size + 3;
constexpr double done_width = 36;
constexpr double done_left = column_width - done_width;
constexpr Across about_across{content_left, column_width - content_left};

TextStyle task_style() {
  TextStyle style;
  style.points = 16;
  style.quiet_points = 13;
  style.line = 1.2;
  return style;
}

Strips tick_box() {
  Strip strip;
  strip.height = box_size;
  strip.pieces.emplace_back(box({content_left, 0, content_left + box_size, box_size}, 0.5));
  return {strip};
}

/// The words and a line to write on, which ends at the edge of the page.
Strips done_line(const std::string& done_on, Typesetter& typesetter) {
  if (done_on.empty()) return {};
  constexpr double height = 6.5;
  TextStyle style;
  style.points = 10;
  style.quiet = true;
  style.most_lines = 1;
  Strip strip;
  strip.height = height;
  double left = done_left;
  for (SetLine& line : typesetter.lines({plain(done_on)}, style, done_width * 2 / 3)) {
    left += line.width + 1.5;
    strip.pieces.emplace_back(PlacedLine{std::move(line), {done_left, height - 1}});
  }
  strip.pieces.emplace_back(rule({left, column_width - left}, height - 0.15, 0.3, Ink::black));
  return {strip};
}

Strips line_strips(const Runs& line, const std::string& done_on, Typesetter& typesetter) {
  const double right = done_on.empty() ? column_width : done_left - 3;
  const Strips text = typesetter.strips(line, task_style(), {text_left, right - text_left});
  return padded(beside({tick_box(), text, done_line(done_on, typesetter)}), 0.5, 0.5);
}

Strips item_strips(const TaskItem& item, const std::string& done_on, Typesetter& typesetter) {
  TextStyle label_style = task_style();
  label_style.strong = true;
  if (is_long_label(item.label)) label_style.points = 11;
  TextStyle about_style = task_style();
  about_style.points = 13;
  Strips lines = typesetter.strips(item.about, about_style, about_across);
  for (const Runs& line : item.lines) {
    lines = below(std::move(lines), line_strips(line, done_on, typesetter));
  }
  const Strips label = typesetter.strips({plain(item.label)}, label_style, {0, who_width});
  Strips strips = padded(beside_on_baseline({label, lines}), 0.9, 0);
  strips.push_back(rule_below(whole_column, 0.9, 0.2, Ink::grey));
  return kept_together(std::move(strips));
}

}  // namespace

Strips task_strips(const TaskList& list, const Strips& heading, Typesetter& typesetter) {
  const auto head = std::make_shared<const Strips>(heading);
  Strips all;
  for (const TaskItem& item : list.items) {
    Strips strips = item_strips(item, list.done_on, typesetter);
    for (Strip& strip : strips) strip.head = head;
    all = below(std::move(all), std::move(strips));
  }
  return all;
}

}  // namespace evenclaw
