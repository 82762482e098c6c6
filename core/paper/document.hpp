// A document as plain values: what is said and in which order, not how it looks. Screens, paper
// and terminals render the same one.
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "core/paper/drawing.hpp"

namespace evenclaw {

enum class Emphasis { plain, strong, quiet };

/// A piece of text in one emphasis. Texts are UTF-8 and unescaped; renderers escape.
struct Run {
  std::string text;
  Emphasis emphasis = Emphasis::plain;
};

using Runs = std::vector<Run>;

inline Run plain(std::string text) {
  return {std::move(text), Emphasis::plain};
}

inline Run strong(std::string text) {
  return {std::move(text), Emphasis::strong};
}

inline Run quiet(std::string text) {
  return {std::move(text), Emphasis::quiet};
}

/// Levels count from 2 (the title is level 1) and go down one at a time.
struct Heading {
  int level = 2;
  std::string text;
  std::string aside = {};  // said quietly beside it: "late", "3 tasks"
};

struct Paragraph {
  Runs runs;
};

/// One line of a list under a term: "Left hind: nothing found".
struct TermLine {
  std::string term;  // may be empty
  Runs runs;
};

struct Bullets {
  std::vector<Runs> items;
};

/// What must be seen first: a heavy black box with its title in capitals. `label` is set large
/// beside each item.
struct NoticeItem {
  std::string label;
  std::vector<Runs> lines;
};

struct BoxedNotice {
  std::string title;
  std::vector<NoticeItem> items;
  Runs foot = {};
  std::string title_continued = {};  // where it goes on on another page; empty: the title
};

/// Lines to be ticked off, each with a box and a place to write when it was done, under one label
/// (a cow number), which is set large. `about` is said before the lines and has no box. The heading
/// above a list says by when and who; it stands again where the list goes on on another page.
struct TaskItem {
  std::string label;
  Runs about;  // may be empty
  std::vector<Runs> lines;
};

struct TaskList {
  std::string done_on;  // the words before the line to write on; empty leaves the line out
  std::vector<TaskItem> items;
};

enum class Align { start, end };

struct TableColumn {
  std::string head;
  Align align = Align::start;
};

/// What the first cell of a row holds, which is its head: a number of a cow is set large.
enum class RowHead { number, words };

struct Table {
  std::string caption;  // may be empty
  std::vector<TableColumn> columns;
  std::vector<std::vector<Runs>> rows;
  RowHead head = RowHead::number;
};

struct WritingColumn {
  std::string head;
  int share = 1;  // of the width, beside the others
};

struct WritingItem {
  std::string label;  // empty leaves room to write it
  Runs about;         // what is known of it; may be empty
};

/// To be written in by hand: for each item a box with its label set large, a line of blanks, rows
/// of cells as high as a hand in wet gloves needs, each with a box to tick first, and a last line
/// of blanks.
struct WritingForm {
  std::string label_head;           // "Cow"
  std::vector<std::string> before;  // blanks above the rows: "Came for"
  std::string tick_head;            // what a tick says: "nothing found"
  std::vector<WritingColumn> columns;
  std::vector<std::string> rows;    // "LH", "RH"
  std::vector<std::string> behind;  // blanks below: "See again"
  std::vector<WritingItem> items;
};

/// `label` says in words what the drawing shows, for those who cannot see it.
struct Figure {
  Drawing drawing;
  std::string label;
  std::string caption = {};  // may be empty
};

/// All there is to say of one thing: a large label, one line beside it, lines below, a drawing.
struct Card {
  std::string label;
  Runs head;
  std::vector<TermLine> lines;
  std::optional<Figure> figure = std::nullopt;
};

/// Words with a line behind them to write on.
struct Blank {
  std::string words;
};

/// Small print: a source, a method, a status.
struct Note {
  Runs runs;
};

/// What follows starts on a new sheet of paper.
struct PageBreak {};

using AnyBlock = std::variant<Heading, Paragraph, Bullets, BoxedNotice, TaskList, Table,
                              WritingForm, Figure, Card, Blank, Note, PageBreak>;

/// One thing on a page. Copied, moved and dropped in document.cpp alone: a variant writes that anew
/// in every source that holds one.
struct Block : AnyBlock {
  using AnyBlock::AnyBlock;
  Block(const Block& other);
  Block(Block&& other) noexcept;
  Block& operator=(const Block& other);
  Block& operator=(Block&& other) noexcept;
  ~Block();
};

struct Fact {
  std::string term;
  std::string value;
};

struct Document {
  std::string language = "en";  // BCP 47
  std::string title;            // names the herd and the day: it is the name of the file too
  std::string kind;             // "Claw trimming visit", said above the title
  std::vector<Fact> facts;      // "Called by: Anna", under the title
  std::optional<Figure> mark;   // beside the title
  std::string foot;             // on every page: what, when, which version
  std::vector<Block> blocks;
};

}  // namespace evenclaw
