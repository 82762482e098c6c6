#include "core/paper/text.hpp"

#include <algorithm>
#include <string_view>
#include <variant>
#include <vector>

#include "core/base/text.hpp"
#include "core/paper/markup.hpp"
#include "core/paper/text_table.hpp"

namespace evenclaw {

namespace {

std::string joined(const Runs& runs) {
  std::string text;
  for (const Run& run : runs) text += run.text;
  return printable(text);
}

std::vector<std::string> words_of(std::string_view text) {
  std::vector<std::string> words;
  std::size_t at = 0;
  while (at < text.size()) {
    const std::size_t end = std::min(text.find(' ', at), text.size());
    if (end > at) words.emplace_back(text.substr(at, end - at));
    at = end + 1;
  }
  return words;
}

std::string spaces(std::size_t count) {
  return std::string(count, ' ');
}

class TextPage {
 public:
  explicit TextPage(std::size_t width) : width_(width) {}

  /// Wraps `text`; the first line starts with `first`, the others with as many spaces, the first of
  /// which may be an `edge`. A `first` that would leave little room stands on a line of its own.
  void add(std::string_view first, std::string_view text, std::string_view edge = {}) {
    std::size_t indent = character_count(first);
    std::string line(first);
    if (indent > width_ / 2) {
      put(std::move(line));
      indent = 4;
      line = indented(indent, edge);
    }
    std::size_t used = indent;
    bool at_start = true;
    for (const std::string& word : words_of(text)) {
      const std::size_t length = character_count(word);
      if (!at_start && used + 1 + length > width_) {
        put(std::move(line));
        line = indented(indent, edge);
        used = indent;
        at_start = true;
      }
      if (!at_start) line += ' ';
      used += length + (at_start ? 0 : 1);
      line += word;
      at_start = false;
    }
    put(std::move(line));
  }

  void blank() {
    if (!text_.empty() &&
        text_.substr(text_.size() - std::min<std::size_t>(2, text_.size())) != "\n\n")
      text_ += '\n';
  }

  void rule(char mark, std::size_t length) { put(std::string(std::min(length, width_), mark)); }

  [[nodiscard]] std::size_t width() const { return width_; }

  void put(std::string line) {
    while (!line.empty() && line.back() == ' ') line.pop_back();
    text_ += line + '\n';
  }

  static std::string indented(std::size_t indent, std::string_view edge) {
    return std::string(edge) + spaces(indent - std::min(indent, edge.size()));
  }

  std::string take() { return std::move(text_); }

 private:
  std::size_t width_;
  std::string text_;
};

std::string with_aside(const std::string& text, const std::string& aside) {
  return printable(aside.empty() ? text : text + " (" + aside + ')');
}

std::string padded(const std::string& text, std::size_t width) {
  const std::size_t length = character_count(text);
  return length < width ? text + spaces(width - length) : text;
}

std::size_t widest_label(const std::vector<TaskItem>& items) {
  std::size_t widest = 0;
  for (const TaskItem& item : items) {
    widest = std::max(widest, character_count(printable(item.label)));
  }
  return widest;
}

void render(TextPage& page, const Heading& heading) {
  const std::string text = with_aside(heading.text, heading.aside);
  page.blank();
  page.add("", text);
  if (heading.level == 2) page.rule('-', character_count(text));
}

void render(TextPage& page, const Paragraph& paragraph) {
  page.blank();
  page.add("", joined(paragraph.runs));
}

void render(TextPage& page, const Bullets& bullets) {
  for (const Runs& item : bullets.items) page.add("- ", joined(item));
}

void render(TextPage& page, const BoxedNotice& notice) {
  page.blank();
  page.rule('#', page.width());
  page.add("# ", printable(notice.title), "#");
  for (const NoticeItem& item : notice.items) {
    std::string first = item.label.empty() ? "# " : "# " + printable(item.label) + "  ";
    for (const Runs& line : item.lines) {
      page.add(first, joined(line), "#");
      first = "# " + spaces(character_count(first) - 2);
    }
  }
  if (!notice.foot.empty()) page.add("# ", joined(notice.foot), "#");
  page.rule('#', page.width());
}

void render(TextPage& page, const TaskList& list) {
  const std::size_t label_width = widest_label(list.items);
  for (const TaskItem& item : list.items) {
    std::string first = padded(printable(item.label), label_width) + "  ";
    const std::string next = spaces(character_count(first));
    if (!item.about.empty()) {
      page.add(first, joined(item.about));
      first = next;
    }
    for (const Runs& line : item.lines) {
      page.add(first + "[ ] ", joined(line));
      first = next;
    }
  }
}

std::vector<std::vector<std::string>> cells_of(const Table& table) {
  std::vector<std::vector<std::string>> rows(1);
  for (const TableColumn& column : table.columns) rows[0].push_back(printable(column.head));
  for (const std::vector<Runs>& row : table.rows) {
    rows.emplace_back();
    for (const Runs& cell : row) rows.back().push_back(joined(cell));
    rows.back().resize(table.columns.size());
  }
  return rows;
}

void render(TextPage& page, const Table& table) {
  if (table.columns.empty()) return;
  page.blank();
  if (!table.caption.empty()) page.add("", printable(table.caption));
  for (std::string& line : table_lines(table.columns, cells_of(table), page.width())) {
    page.put(std::move(line));
  }
}

std::string with_blank(const std::string& name) {
  constexpr std::size_t blank_width = 12;
  return printable(name) + ' ' + std::string(blank_width, '_');
}

std::string with_blanks(const std::vector<std::string>& names) {
  std::string line;
  for (const std::string& name : names) line += (line.empty() ? "" : "  ") + with_blank(name);
  return line;
}

void render(TextPage& page, const WritingForm& form) {
  std::vector<std::string> cells;
  cells.reserve(form.columns.size());
  for (const WritingColumn& column : form.columns) cells.push_back(column.head);
  for (const WritingItem& item : form.items) {
    page.blank();
    page.add(item.label.empty() ? with_blank(form.label_head) : printable(item.label) + "  ",
             joined(item.about));
    page.add("    ", with_blanks(form.before));
    for (const std::string& row : form.rows) {
      page.add("    " + printable(row) + "  [ ] " + printable(form.tick_head) + "  ",
               with_blanks(cells));
    }
    page.add("    ", with_blanks(form.behind));
  }
}

void render(TextPage& page, const Figure& figure) {
  if (!figure.caption.empty()) page.add("  ", printable(figure.caption));
}

void render(TextPage& page, const Card& card) {
  page.blank();
  page.add(printable(card.label) + "  ", joined(card.head));
  for (const TermLine& line : card.lines) {
    page.add("    ", (line.term.empty() ? "" : printable(line.term) + ": ") + joined(line.runs));
  }
}

void render(TextPage& page, const Blank& blank) {
  page.add("", with_blank(blank.words));
}

void render(TextPage& page, const Note& note) {
  page.add("  ", joined(note.runs));
}

void render(TextPage& page, const PageBreak&) {
  page.blank();
}

void render_head(TextPage& page, const Document& document) {
  if (!document.kind.empty()) page.add("", printable(document.kind));
  page.add("", printable(document.title));
  page.rule('=', character_count(printable(document.title)));
  for (const Fact& fact : document.facts) {
    page.add(printable(fact.term) + ": ", printable(fact.value));
  }
}

}  // namespace

std::string to_plain_text(const Document& document, std::size_t width) {
  TextPage page(std::max<std::size_t>(width, 20));
  render_head(page, document);
  for (const Block& block : document.blocks) {
    std::visit([&](const auto& one) { render(page, one); }, block);
  }
  if (!document.foot.empty()) {
    page.blank();
    page.add("", printable(document.foot));
  }
  return page.take();
}

}  // namespace evenclaw
