#include <utility>

#include "report/pdf/block_strips.hpp"
#include "report/pdf/page_column.hpp"

namespace evenclaw {

namespace {

/// At least two lines on either side of the end of a page.
Strips without_lone_lines(Strips strips) {
  const std::size_t count = strips.size();
  if (count < 2) return strips;
  strips[0].with_next = true;
  strips[count - 2].with_next = true;
  return strips;
}

TextStyle heading_style(int level) {
  TextStyle style;
  style.strong = true;
  style.line = 1.2;
  style.quiet_points = 12;
  if (level <= 2) {
    style.points = 16;
  } else if (level == 3) {
    style.points = 14;
  } else {
    style.points = 12;
  }
  return style;
}

/// The two claws of a print.
Strip bullet_mark() {
  Strip strip;
  strip.height = 4.4;
  for (const double x : {1.2, 3.0}) {
    strip.pieces.emplace_back(
        ellipse({x, 2.75}, 0.65, 1.4, Ink::black, {Ink::none, 0, Dash::solid}));
  }
  return strip;
}

}  // namespace

Strips heading_strips(const Heading& heading, bool first, Typesetter& typesetter) {
  Runs runs = {plain(heading.text)};
  if (!heading.aside.empty()) runs.push_back(quiet("  " + heading.aside));
  Strips strips = typesetter.strips(runs, heading_style(heading.level), whole_column);
  if (strips.empty()) return strips;
  const bool top_level = heading.level <= 2;
  if (top_level && !first) strips = ruled(std::move(strips), whole_column, 0.8, 1.5);
  for (Strip& strip : strips) strip.with_next = true;
  return with_gaps(std::move(strips), top_level ? 4 : 3, 1);
}

Strips paragraph_strips(const Paragraph& paragraph, Typesetter& typesetter) {
  Strips strips = typesetter.strips(paragraph.runs, {}, whole_column);
  return with_gaps(without_lone_lines(std::move(strips)), 1.5, 1.5);
}

Strips bullet_strips(const Bullets& bullets, Typesetter& typesetter) {
  constexpr double indent = 6;
  Strips all;
  for (const Runs& item : bullets.items) {
    Strips lines = typesetter.strips(item, {}, {indent, column_width - indent});
    if (lines.empty()) continue;
    const Strip mark = bullet_mark();
    lines.front().pieces.insert(lines.front().pieces.end(), mark.pieces.begin(), mark.pieces.end());
    all = below(std::move(all), with_gaps(kept_together(std::move(lines)), 0.8, 0.8));
  }
  return all;
}

Strips blank_strips(const Blank& blank, Typesetter& typesetter) {
  constexpr double height = 9;
  constexpr double gap = 1.5;
  constexpr double widest = column_width * 2 / 3;
  TextStyle style;
  style.most_lines = 1;
  Strip strip;
  strip.height = height;
  double left = 0;
  for (SetLine& line : typesetter.lines({plain(blank.words)}, style, widest)) {
    left = line.width + gap;
    strip.pieces.emplace_back(PlacedLine{std::move(line), {0, height - 1}});
  }
  strip.pieces.emplace_back(rule({left, column_width - left}, height - 0.2, 0.4, Ink::black));
  return with_gaps({strip}, 1.5, 1.5);
}

Strips note_strips(const Note& note, Typesetter& typesetter) {
  TextStyle style;
  style.points = 10;
  style.quiet = true;
  Strips strips = typesetter.strips(note.runs, style, whole_column);
  return with_gaps(without_lone_lines(std::move(strips)), 1.5, 1.5);
}

}  // namespace evenclaw
