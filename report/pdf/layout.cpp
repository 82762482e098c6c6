#include "report/pdf/layout.hpp"

#include <utility>
#include <variant>

#include "core/paper/page_words.hpp"
#include "report/pdf/block_strips.hpp"
#include "report/pdf/page_column.hpp"

namespace evenclaw {

namespace {

/// Makes strips of the blocks one after another and keeps what a later block has to know.
class BlockSetter {
 public:
  explicit BlockSetter(Typesetter& typesetter) : typesetter_(typesetter) {}

  Strips operator()(const Heading& heading) { return heading_strips(heading, first_, typesetter_); }

  Strips operator()(const Paragraph& paragraph) { return paragraph_strips(paragraph, typesetter_); }

  Strips operator()(const Bullets& bullets) { return bullet_strips(bullets, typesetter_); }

  Strips operator()(const BoxedNotice& notice) { return notice_strips(notice, typesetter_); }

  Strips operator()(const TaskList& list) { return task_strips(list, heading_, typesetter_); }

  Strips operator()(const Table& table) { return table_strips(table, typesetter_); }

  Strips operator()(const WritingForm& form) { return writing_strips(form, typesetter_); }

  Strips operator()(const Figure& figure) {
    return figure_strips(figure, whole_column, typesetter_);
  }

  Strips operator()(const Card& card) { return card_strips(card, typesetter_); }

  Strips operator()(const Blank& blank) { return blank_strips(blank, typesetter_); }

  Strips operator()(const Note& note) { return note_strips(note, typesetter_); }

  Strips operator()(const PageBreak&) {
    breaks_ = true;
    return {};
  }

  Strips set(const Block& block, int number) {
    Strips strips = std::visit(*this, block);
    if (strips.empty()) return strips;
    for (Strip& strip : strips) strip.block = number;
    heading_ = std::holds_alternative<Heading>(block) ? strips : Strips{};
    strips.front().starts_page = breaks_;
    breaks_ = false;
    first_ = false;
    return strips;
  }

 private:
  Typesetter& typesetter_;
  Strips heading_;  // of the block before, when that was one
  bool first_ = true;
  bool breaks_ = false;
};

/// What ends a page or the document has nothing to stay with.
Strips with_open_ends(Strips strips) {
  for (std::size_t i = 0; i < strips.size(); ++i) {
    const bool ends = i + 1 == strips.size() || strips[i + 1].starts_page;
    if (ends) strips[i].with_next = false;
  }
  return strips;
}

/// Two lines in the lower margin, the number of the page to their right.
void add_foot(Page& page, const Document& document, const std::string& number,
              Typesetter& typesetter) {
  constexpr double number_width = 34;
  constexpr double top = paper_height - margin_bottom + 4;
  TextStyle style;
  style.points = 9;
  style.line = 1.2;
  style.quiet = true;
  style.most_lines = 2;
  const Across left{margin_side, column_width - number_width};
  const Across right{margin_side + left.width, number_width};
  const Strips said = typesetter.strips({plain(document.foot)}, style, left);
  style.align = Align::end;
  const Strips numbered = typesetter.strips({plain(number)}, style, right);
  double y = top;
  for (const Strip& strip : beside({said, numbered})) {
    for (const Piece& piece : strip.pieces) page.pieces.push_back(moved(piece, 0, y));
    y += strip.height;
  }
}

}  // namespace

Strips document_strips(const Document& document, Typesetter& typesetter) {
  Strips all = document_head_strips(document, typesetter);
  BlockSetter setter(typesetter);
  for (std::size_t i = 0; i < document.blocks.size(); ++i) {
    Strips strips = setter.set(document.blocks[i], static_cast<int>(i));
    // Small print says how to read what stands above it.
    const bool is_note = std::holds_alternative<Note>(document.blocks[i]) && !strips.empty();
    if (is_note && !all.empty() && !strips.front().starts_page) all.back().with_next = true;
    all = below(std::move(all), std::move(strips));
  }
  return with_open_ends(std::move(all));
}

std::vector<Page> laid_out(const Document& document, Typesetter& typesetter) {
  std::vector<Page> pages = dealt_to_pages(document_strips(document, typesetter));
  for (std::size_t i = 0; i < pages.size(); ++i) {
    add_foot(pages[i], document, page_number(document.language, i + 1, pages.size()), typesetter);
  }
  return pages;
}

}  // namespace evenclaw
