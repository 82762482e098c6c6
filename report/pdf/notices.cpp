#include <algorithm>
#include <utility>

#include "core/paper/long_label.hpp"
#include "report/pdf/block_strips.hpp"
#include "report/pdf/page_column.hpp"

namespace evenclaw {

namespace {

constexpr double stroke = 1.3;
constexpr double padding_side = 4;
constexpr double edge = stroke + padding_side;
constexpr Across inside{edge, column_width - 2 * edge};
// A box no higher than this is not parted at all: what it leaves empty is less than it holds.
constexpr double small_box = column_height / 2;

TextStyle label_style(const std::string& label) {
  TextStyle style;
  style.points = is_long_in_box(label) ? 13 : 22;
  style.strong = true;
  style.line = 1.1;
  return style;
}

/// All labels share one column, as wide as the widest of them asks for.
double label_width(const BoxedNotice& notice, Typesetter& typesetter) {
  double width = 17;
  for (const NoticeItem& item : notice.items) {
    width = std::max(width, typesetter.natural_width({plain(item.label)}, label_style(item.label)));
  }
  return std::min(width, 60.0);
}

Strips item_strips(const NoticeItem& item, double label_width, Typesetter& typesetter) {
  constexpr double gap = 5;
  TextStyle style;
  style.points = 13;
  Across across = inside;
  Strips label;
  if (!item.label.empty()) {
    label =
        typesetter.strips({plain(item.label)}, label_style(item.label), {inside.left, label_width});
    across = {inside.left + label_width + gap, inside.width - label_width - gap};
  }
  Strips lines;
  for (const Runs& line : item.lines) {
    lines = below(std::move(lines), typesetter.strips(line, style, across));
  }
  Strips strips = padded(beside_on_baseline({label, lines}), 1.1, 1.1);
  return kept_together(ruled(std::move(strips), inside, 0.3, 0));
}

/// No page holds the first or the last of several alone.
Strips items_strips(const BoxedNotice& notice, Typesetter& typesetter) {
  const double width = label_width(notice, typesetter);
  Strips body;
  for (std::size_t i = 0; i < notice.items.size(); ++i) {
    body = below(std::move(body), item_strips(notice.items[i], width, typesetter));
    const bool is_before_last = i + 2 == notice.items.size();
    const bool is_first = i == 0 && notice.items.size() > 1;
    const bool stays = is_first || is_before_last;
    if (stays && !body.empty()) body.back().with_next = true;
  }
  return body;
}

}  // namespace

Strips notice_strips(const BoxedNotice& notice, Typesetter& typesetter) {
  TextStyle title_style;
  title_style.points = 20;
  title_style.strong = true;
  title_style.line = 1.2;
  const auto titled = [&](const std::string& words) {
    return with_gaps(kept_together(typesetter.strips({plain(words)}, title_style, inside)), 0, 1);
  };
  const Strips title = titled(notice.title);
  Strips body = items_strips(notice, typesetter);
  TextStyle foot_style;
  foot_style.points = 12;
  Strips foot = padded(typesetter.strips(notice.foot, foot_style, inside), 1.5, 0);
  foot = kept_together(ruled(std::move(foot), inside, 0.3, 0));
  // The foot says what holds for the items: it does not stand alone on a page.
  if (!body.empty() && !foot.empty()) body.back().with_next = true;
  body = below(std::move(body), std::move(foot));

  const auto frame = std::make_shared<const Frame>(Frame{stroke, 3});
  auto head = std::make_shared<Strips>(
      notice.title_continued.empty() ? title : titled(notice.title_continued));
  for (Strip& strip : *head) strip.frame = frame;
  for (Strip& strip : body) strip.head = head;
  Strips all = title;
  if (!all.empty()) all.back().with_next = !body.empty();
  all = below(std::move(all), std::move(body));
  for (Strip& strip : all) strip.frame = frame;
  if (height_of(all) < small_box) all = kept_together(std::move(all));
  return with_gaps(std::move(all), 4, 4);
}

}  // namespace evenclaw
