// Documents of every kind of block, drawn from a seed: each text in them is a word of its own.
#pragma once

#include <string>
#include <vector>

#include "core/base/random.hpp"
#include "core/paper/document.hpp"

namespace evenclaw::test {

class RandomDocument {
 public:
  explicit RandomDocument(std::uint64_t seed) : draw_(seed, 1) {}

  Document document() {
    Document document;
    document.title = text(4);
    document.kind = text(2);
    document.facts = {{text(1), text(3)}, {text(1), text(2)}};
    document.foot = "what and when";
    const std::uint32_t count = 3 + draw_.below(14);
    for (std::uint32_t i = 0; i < count; ++i) document.blocks.push_back(block());
    return document;
  }

  /// All words handed out, in the order of the document.
  [[nodiscard]] const std::vector<std::string>& words() const { return words_; }

 private:
  /// Three small letters, so that no place is too narrow for one.
  static std::string word(std::size_t number) {
    constexpr std::size_t letters = 26;
    return {static_cast<char>('a' + number / letters / letters % letters),
            static_cast<char>('a' + number / letters % letters),
            static_cast<char>('a' + number % letters)};
  }

  std::string text(std::uint32_t most_words) {
    std::string all;
    for (std::uint32_t left = 1 + draw_.below(most_words); left > 0; --left) {
      words_.push_back(word(words_.size()));
      all += (all.empty() ? "" : " ") + words_.back();
    }
    return all;
  }

  Runs runs(std::uint32_t most_words) {
    Runs all = {plain(text(most_words))};
    if (draw_.chance(0.5)) all.push_back(strong(" " + text(most_words)));
    if (draw_.chance(0.3)) all.push_back(quiet(" " + text(most_words)));
    return all;
  }

  std::vector<Runs> several(std::uint32_t most, std::uint32_t most_words) {
    std::vector<Runs> all;
    for (std::uint32_t left = 1 + draw_.below(most); left > 0; --left) {
      all.push_back(runs(most_words));
    }
    return all;
  }

  Heading heading() {
    Heading heading;
    heading.level = 2 + static_cast<int>(draw_.below(3));
    heading.text = text(5);
    return heading;
  }

  BoxedNotice notice() {
    BoxedNotice notice;
    notice.title = text(3);
    for (std::uint32_t left = draw_.below(14); left > 0; --left) {
      NoticeItem item;
      item.label = text(1);
      item.lines = several(3, 20);
      notice.items.push_back(item);
    }
    notice.foot = runs(20);
    return notice;
  }

  TaskList tasks() {
    TaskList list;
    list.done_on = draw_.chance(0.5) ? "done on" : "";
    for (std::uint32_t left = 1 + draw_.below(25); left > 0; --left) {
      TaskItem item;
      item.label = text(1);
      // Once in a while more than a page holds.
      item.lines = several(draw_.chance(0.02) ? 60 : 5, 12);
      list.items.push_back(item);
    }
    return list;
  }

  Table table() {
    Table table;
    table.columns = {{text(1)}, {text(2), Align::end}, {text(1)}};
    if (draw_.chance(0.5)) table.head = RowHead::words;
    for (std::uint32_t left = draw_.below(60); left > 0; --left) {
      const Runs first = {plain(text(2))};
      const Runs second = runs(5);
      table.rows.push_back({first, second, runs(25)});
    }
    return table;
  }

  WritingForm form() {
    WritingForm form;
    form.label_head = "Cow";
    form.before = {"Reason"};
    form.tick_head = "nothing found";
    form.columns = {{"what", 2}, {"where", 1}};
    form.rows = {"LH", "RH"};
    form.behind = {"See again"};
    for (std::uint32_t left = 1 + draw_.below(6); left > 0; --left) {
      const std::string label = text(1);
      form.items.push_back({label, runs(15)});
    }
    return form;
  }

  Card card() {
    Card card;
    card.label = text(1);
    card.head = runs(4);
    for (std::uint32_t left = draw_.below(6); left > 0; --left) {
      const std::string term = text(2);
      card.lines.push_back({term, runs(20)});
    }
    if (draw_.chance(0.5)) card.figure = figure();
    return card;
  }

  Figure figure() {
    Figure figure;
    figure.drawing = {20 + 200 * draw_.uniform(), 10 + 300 * draw_.uniform(), {}};
    figure.caption = text(3);
    return figure;
  }

  Block block() {
    switch (draw_.below(12)) {
      case 0:
        return heading();
      case 1:
        return Paragraph{runs(200)};
      case 2:
        return Bullets{several(6, 30)};
      case 3:
        return notice();
      case 4:
      case 5:
        return tasks();
      case 6:
        return table();
      case 7:
        return form();
      case 8:
        return card();
      case 9:
        return draw_.chance(0.5) ? Block(figure()) : Block(Note{runs(30)});
      case 10:
        return Blank{text(6)};
      default:
        return draw_.chance(0.3) ? Block(PageBreak{}) : Block(heading());
    }
  }

  RandomStream draw_;
  std::vector<std::string> words_;
};

}  // namespace evenclaw::test
