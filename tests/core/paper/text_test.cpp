#include "core/paper/text.hpp"

#include <doctest/doctest.h>

#include "core/base/text.hpp"

namespace evenclaw {

namespace {

Document page_with(std::vector<Block> blocks) {
  Document document;
  document.title = "Hollow Meadow";
  document.blocks = std::move(blocks);
  return document;
}

std::vector<std::string> lines_of(const std::string& text) {
  std::vector<std::string> lines(1);
  for (const char letter : text) {
    if (letter == '\n') {
      lines.emplace_back();
    } else {
      lines.back() += letter;
    }
  }
  lines.pop_back();
  return lines;
}

const std::string many_words =
    "the wrap has slipped and cuts in above the claws so that it has to come off today already";

}  // namespace

TEST_CASE("no line is wider than the terminal, whatever the block") {
  const Runs runs = {plain(many_words)};
  const Document document = page_with({Heading{2, many_words, "late"}, Paragraph{runs},
                                       Bullets{{runs}}, BoxedNotice{"VET", {{"412", {runs}}}, runs},
                                       TaskList{"done", {{"412", runs, {runs}}}},
                                       Table{"", {{"Cow"}, {"What"}}, {{{plain("412")}, runs}}},
                                       Card{"412", runs, {{"Left hind", runs}}}, Note{runs}});
  for (const std::size_t width : {20U, 40U, 80U}) {
    for (const std::string& line : lines_of(to_plain_text(document, width))) {
      CHECK_MESSAGE(character_count(line) <= width, line);
    }
  }
}

TEST_CASE("a word longer than the line stands alone and whole") {
  const std::string word(60, 'x');
  const std::string text = to_plain_text(page_with({Paragraph{{plain("a " + word + " b")}}}), 30);
  CHECK(text.find("a\n" + word + "\nb\n") != std::string::npos);
}

TEST_CASE("tasks have a box per line and the label once") {
  const std::string text = to_plain_text(page_with(
      {TaskList{"done on",
                {{"9", {}, {{plain("wrap off")}}},
                 {"412", {strong("brown")}, {{plain("block off")}, {plain("see again")}}}}}}));
  CHECK(text.find("9    [ ] wrap off\n"
                  "412  brown\n"
                  "     [ ] block off\n"
                  "     [ ] see again\n") != std::string::npos);
}

TEST_CASE("a cow who takes many words to name stands on a line of her own") {
  const std::string looks = "no number, brown heifer with a white star";
  const std::string text = to_plain_text(page_with({Card{looks, {plain("came lame")}, {}}}), 60);
  CHECK(text.find(looks) != std::string::npos);
  CHECK(text.find("\n    came lame\n") != std::string::npos);
}

TEST_CASE("a notice is framed on every line") {
  const std::string text = to_plain_text(
      page_with({BoxedNotice{"VET TODAY", {{"412", {{plain(many_words)}}}}, {}}}), 40);
  for (const std::string& line : lines_of(text.substr(text.find('#')))) {
    CHECK(line.substr(0, 1) == "#");
  }
}

TEST_CASE("columns of a table line up and numbers stand to the right") {
  const std::string text =
      to_plain_text(page_with({Table{"",
                                     {{"Lesion"}, {"Cows", Align::end}, {"Note"}},
                                     {{{plain("ulcer")}, {plain("12")}, {plain("x")}},
                                      {{plain("abscess")}, {plain("3")}, {plain("y")}}}}}));
  CHECK(text.find("Lesion   Cows  Note\n"
                  "ulcer      12  x\n"
                  "abscess     3  y\n") != std::string::npos);
}

TEST_CASE("a row shorter than its table is filled with nothing") {
  const std::string text =
      to_plain_text(page_with({Table{"", {{"a"}, {"b"}, {"c"}}, {{{plain("1")}}}}}));
  CHECK(text.find("a  b  c\n1\n") != std::string::npos);
}

TEST_CASE("what a terminal could obey does not reach it") {
  const std::string text = to_plain_text(page_with({Paragraph{{plain("a\x1b[2Jb")}}}));
  CHECK(text.find('\x1b') == std::string::npos);
}

TEST_CASE("accented letters count as one character") {
  Document document = page_with({});
  document.title = "Söhne";
  CHECK(to_plain_text(document) == "Söhne\n=====\n");
}

}  // namespace evenclaw
