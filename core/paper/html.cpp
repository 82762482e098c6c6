#include "core/paper/html.hpp"

#include <algorithm>
#include <utility>
#include <variant>

#include "core/paper/font_face.hpp"
#include "core/paper/html_style.hpp"
#include "core/paper/long_label.hpp"
#include "core/paper/markup.hpp"
#include "core/paper/page_words.hpp"
#include "core/paper/svg.hpp"

namespace evenclaw {

namespace {

// A notice of no more lines stays on one printed page: what that leaves empty is less than half.
constexpr std::size_t most_lines_of_short_notice = 16;

std::string element(std::string_view tag, std::string_view content, std::string_view kind = {}) {
  std::string html = '<' + std::string(tag);
  if (!kind.empty()) html += " class=\"" + std::string(kind) + '"';
  return html + '>' + std::string(content) + "</" + std::string(tag) + '>';
}

std::string html_of(const Run& run) {
  switch (run.emphasis) {
    case Emphasis::plain:
      return escaped_prose(run.text);
    case Emphasis::strong:
      return element("strong", escaped_prose(run.text));
    case Emphasis::quiet:
      return element("span", escaped_prose(run.text), "quiet");
  }
  return {};
}

std::string html_of(const Runs& runs) {
  std::string html;
  for (const Run& run : runs) html += html_of(run);
  return html;
}

std::string paragraphs_of(const std::vector<Runs>& lines) {
  std::string html;
  for (const Runs& line : lines) html += element("p", html_of(line));
  return html;
}

std::string figure_of(const Figure& figure, std::string_view kind) {
  std::string content = to_svg(figure.drawing, figure.label);
  if (!figure.caption.empty()) content += element("figcaption", escaped(figure.caption));
  return element("figure", content, kind);
}

/// Renders the blocks one after another and keeps what a later block has to know.
class HtmlBody {
 public:
  std::string operator()(const Heading& heading) {
    level_ = std::clamp(heading.level, 2, 5);
    std::string content = escaped(heading.text);
    if (!heading.aside.empty()) {
      content += ' ' + element("span", escaped(heading.aside), "aside");
    }
    return element('h' + std::to_string(level_), content, after_break());
  }

  std::string operator()(const Paragraph& paragraph) {
    return element("p", html_of(paragraph.runs), after_break());
  }

  std::string operator()(const Bullets& bullets) {
    std::string items;
    for (const Runs& item : bullets.items) items += element("li", html_of(item)) + '\n';
    return element("ul", '\n' + items, "bullets");
  }

  std::string operator()(const BoxedNotice& notice) {
    level_ = 2;
    std::string items;
    std::size_t lines = 0;
    for (const NoticeItem& item : notice.items) {
      items += notice_item(item) + '\n';
      lines += std::max<std::size_t>(item.lines.size(), 1);
    }
    std::string content = element("h2", escaped(notice.title)) + '\n';
    if (!items.empty()) content += element("ul", '\n' + items) + '\n';
    if (!notice.foot.empty()) content += element("p", html_of(notice.foot), "foot") + '\n';
    return element("section", '\n' + content,
                   lines <= most_lines_of_short_notice ? "notice short" : "notice");
  }

  /// The heading that stands over the tasks that follow.
  void head_of_tasks(const Heading& heading) { head_of_tasks_ = (*this)(heading); }

  /// List and heading make one table to the eye, for of a table the head is printed again on the
  /// next page.
  std::string operator()(const TaskList& list) {
    std::string items;
    for (const TaskItem& item : list.items) items += task_item(item, list.done_on) + '\n';
    const std::string head = std::exchange(head_of_tasks_, {});
    std::string content = head.empty() ? std::string() : element("div", head, "by") + '\n';
    content += element("ul", '\n' + items, "tasks") + '\n';
    return element("div", '\n' + content, "todo");
  }

  std::string operator()(const Table& table) {
    std::string head;
    for (const TableColumn& column : table.columns) {
      head +=
          "<th scope=\"col\"" + std::string(align(column)) + '>' + escaped(column.head) + "</th>";
    }
    std::string body;
    for (const auto& row : table.rows) body += table_row(table, row) + '\n';
    std::string content;
    if (!table.caption.empty()) content += element("caption", escaped(table.caption)) + '\n';
    content += element("thead", element("tr", head)) + '\n';
    return element("table", '\n' + content + element("tbody", '\n' + body) + '\n',
                   table.head == RowHead::words ? "words" : "");
  }

  std::string operator()(const WritingForm& form) {
    std::string html;
    for (const WritingItem& item : form.items) html += writing_item(form, item) + '\n';
    return element("section", '\n' + html, "writing");
  }

  std::string operator()(const Figure& figure) { return figure_of(figure, "plain"); }

  std::string operator()(const Card& card) const {
    std::string content = element('h' + std::to_string(level_ + 1), escaped(card.label),
                                  is_long_label(card.label) ? "label long" : "label") +
                          '\n';
    const std::string head =
        card.head.empty() ? std::string() : element("p", html_of(card.head), "head") + '\n';
    std::string lines;
    for (const TermLine& line : card.lines) lines += term_line(line) + '\n';
    // What is said beside her number stands below it when there is more to say.
    if (!lines.empty()) content += head;
    content = element("div", '\n' + content) + '\n';
    content += lines.empty() ? head : element("dl", '\n' + lines) + '\n';
    if (card.figure) content += figure_of(*card.figure, "") + '\n';
    return element("article", '\n' + content, card.figure ? "card" : "card bare");
  }

  std::string operator()(const Blank& blank) {
    return element("p", escaped(blank.words) + "<i></i>", "blank");
  }

  std::string operator()(const Note& note) { return element("p", html_of(note.runs), "note"); }

  std::string operator()(const PageBreak&) {
    breaks_ = true;
    return {};
  }

  /// A block that does not begin a new sheet by itself is put into one that does.
  std::string rendered(const Block& block) {
    std::string html = std::visit(*this, block);
    const bool is_break = std::holds_alternative<PageBreak>(block);
    if (is_break || html.empty() || !breaks_) return html;
    return element("div", '\n' + html + '\n', after_break());
  }

 private:
  std::string_view after_break() {
    const bool was = breaks_;
    breaks_ = false;
    return was ? "page" : "";
  }

  static std::string notice_item(const NoticeItem& item) {
    const std::string lines = paragraphs_of(item.lines);
    if (item.label.empty()) return element("li", element("div", lines, "only"));
    const std::string_view kind = is_long_in_box(item.label) ? "label long" : "label";
    return element("li", element("span", escaped(item.label), kind) + element("div", lines));
  }

  static std::string task_item(const TaskItem& item, const std::string& done_on) {
    const std::string done =
        done_on.empty() ? std::string() : element("span", escaped(done_on) + "<i></i>", "done");
    std::string lines;
    if (!item.about.empty()) lines += element("p", html_of(item.about), "about");
    for (const Runs& line : item.lines) {
      lines += element("div", "<span class=\"box\" aria-hidden=\"true\"></span>" +
                                  element("p", html_of(line)) + done);
    }
    const std::string_view kind = is_long_label(item.label) ? "label long" : "label";
    return element("li", element("span", escaped(item.label), kind) + element("div", lines));
  }

  static std::string blanks(const std::vector<std::string>& names) {
    std::string html;
    for (const std::string& name : names) {
      html += element("span", escaped(name) + "<i></i>", "blank");
    }
    return element("div", html, "blanks");
  }

  static std::string writing_rows(const WritingForm& form) {
    int shares = 0;
    for (const WritingColumn& column : form.columns) shares += column.share;
    shares = std::max(shares, 1);
    std::string columns = "<col class=\"row\"><col class=\"tick\">";
    std::string head = "<td></td>" + element("th", escaped(form.tick_head));
    for (const WritingColumn& column : form.columns) {
      // Four fifths of the width are theirs.
      columns += "<col style=\"width:" + std::to_string(80 * column.share / shares) + "%\">";
      head += element("th", escaped(column.head));
    }
    std::string rows;
    for (const std::string& row : form.rows) {
      std::string cells =
          element("th", escaped(row)) + "<td><span class=\"box\" aria-hidden=\"true\"></span></td>";
      for (std::size_t i = 0; i < form.columns.size(); ++i) cells += "<td></td>";
      rows += element("tr", cells) + '\n';
    }
    return element("table", element("colgroup", columns) + '\n' +
                                element("thead", element("tr", head)) + '\n' +
                                element("tbody", '\n' + rows));
  }

  static std::string writing_item(const WritingForm& form, const WritingItem& item) {
    const std::string label =
        item.label.empty() ? element("p", escaped(form.label_head) + "<i></i>", "label blank")
                           : element("h3", escaped(item.label),
                                     is_long_label(item.label) ? "label long" : "label");
    const std::string about =
        item.about.empty() ? std::string() : element("p", html_of(item.about), "about");
    return element("article", element("div", label + about + blanks(form.before), "top") + '\n' +
                                  writing_rows(form) + '\n' + blanks(form.behind));
  }

  static std::string_view align(const TableColumn& column) {
    return column.align == Align::end ? " class=\"end\"" : "";
  }

  /// The head of a row; one of many characters, as what a cow without a number looks like, may be
  /// parted.
  static std::string row_head(const Table& table, const Runs& runs) {
    std::string text;
    for (const Run& run : runs) text += run.text;
    const bool is_parted = table.head != RowHead::words && is_long_label(text);
    const std::string_view kind = is_parted ? " class=\"long\"" : align(table.columns.front());
    return "<th scope=\"row\"" + std::string(kind) + '>' + html_of(runs) + "</th>";
  }

  static std::string table_row(const Table& table, const std::vector<Runs>& row) {
    std::string cells;
    for (std::size_t i = 0; i < row.size() && i < table.columns.size(); ++i) {
      const std::string kind(align(table.columns[i]));
      cells += i == 0 ? row_head(table, row[i]) : "<td" + kind + '>' + html_of(row[i]) + "</td>";
    }
    return element("tr", cells);
  }

  static std::string term_line(const TermLine& line) {
    if (line.term.empty()) {
      return "<div><dt hidden></dt>" + element("dd", html_of(line.runs), "only") + "</div>";
    }
    return element("div", element("dt", escaped(line.term)) + element("dd", html_of(line.runs)));
  }

  int level_ = 1;
  bool breaks_ = false;
  std::string head_of_tasks_;
};

std::string header_of(const Document& document) {
  std::string content;
  if (!document.kind.empty()) content += element("p", escaped(document.kind), "kind") + '\n';
  content += element("h1", escaped(document.title)) + '\n';
  std::string facts;
  for (const Fact& fact : document.facts) {
    facts += element("div", element("dt", escaped(fact.term)) + element("dd", escaped(fact.value)));
  }
  if (!facts.empty()) content += element("dl", facts) + '\n';
  if (document.mark) content += figure_of(*document.mark, "") + '\n';
  return element("header", '\n' + content);
}

std::string page_rule(const Document& document) {
  const PageWords words = page_words(document.language);
  return "@page{size:A4;margin:14mm 12mm 16mm;@bottom-left{content:" + css_string(document.foot) +
         ";font:9pt B612,Arial,sans-serif}@bottom-right{content:" + css_string(words.before) +
         "counter(page)" + css_string(words.between) +
         "counter(pages);white-space:nowrap;font:9pt B612,Arial,sans-serif}}\n";
}

bool is_head_of_tasks(const std::vector<Block>& blocks, std::size_t at) {
  return std::holds_alternative<Heading>(blocks[at]) && at + 1 < blocks.size() &&
         std::holds_alternative<TaskList>(blocks[at + 1]);
}

std::string body_of(const std::vector<Block>& blocks) {
  std::string html;
  HtmlBody body;
  for (std::size_t i = 0; i < blocks.size(); ++i) {
    if (is_head_of_tasks(blocks, i)) {
      body.head_of_tasks(std::get<Heading>(blocks[i]));
      continue;
    }
    const std::string one = body.rendered(blocks[i]);
    if (!one.empty()) html += one + '\n';
  }
  return html;
}

std::string head_of(const Document& document, const std::vector<FontFile>& fonts) {
  std::string faces;
  for (const FontFile& font : fonts) faces += font_face(font);
  return "<head>\n<meta charset=\"utf-8\">\n"
         "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; "
         "style-src 'unsafe-inline'; font-src data:\">\n"
         "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
         "<meta name=\"color-scheme\" content=\"light\">\n" +
         element("title", escaped(document.title)) + "\n<style>\n" + faces + page_rule(document) +
         std::string(html_style()) + "</style>\n</head>\n";
}

}  // namespace

std::string to_html(const Document& document, const std::vector<FontFile>& fonts) {
  std::string html = "<!DOCTYPE html>\n<html lang=\"" + escaped(document.language) + "\">\n" +
                     head_of(document, fonts) + "<body>\n" + header_of(document) + "\n<main>\n" +
                     body_of(document.blocks) + "</main>\n";
  if (!document.foot.empty()) html += element("footer", escaped(document.foot)) + '\n';
  return html + "</body>\n</html>\n";
}

}  // namespace evenclaw
