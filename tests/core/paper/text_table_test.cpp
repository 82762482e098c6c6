#include "core/paper/text_table.hpp"

#include <doctest/doctest.h>

#include "core/base/text.hpp"

namespace evenclaw {

namespace {

using Lines = std::vector<std::string>;

std::size_t widest(const Lines& lines) {
  std::size_t width = 0;
  for (const std::string& line : lines) width = std::max(width, character_count(line));
  return width;
}

}  // namespace

TEST_CASE("columns are as wide as they need where the line has room") {
  CHECK(table_lines({{"Cow"}, {"Cows", Align::end}}, {{"Cow", "Cows"}, {"412", "3"}}, 80) ==
        Lines{"Cow  Cows", "412     3"});
}

TEST_CASE("where the line is full the widest column becomes narrower, the others stay whole") {
  CHECK(table_lines({{"Cow"}, {"Why"}, {"Feet"}},
                    {{"412", "came lame on left hind and has a block", "both"}}, 30) ==
        Lines{"412  came lame on left    both", "     hind and has a", "     block"});
}

TEST_CASE("no line of a table is wider than asked for, whatever its columns hold") {
  const std::string long_name(60, 'x');
  const std::string words = "brown heifer with a white star and one horn, from the upper yard";
  for (const std::size_t width : {20U, 40U, 80U}) {
    const Lines lines = table_lines({{"a"}, {"b"}, {"c"}},
                                    {{words, long_name, words}, {long_name, words, "12"}}, width);
    CHECK(widest(lines) <= width);
  }
}

TEST_CASE("a word wider than its column is parted between its letters and loses none") {
  const std::string name = "S\xC3\xB6hneS\xC3\xB6hneS\xC3\xB6hneS\xC3\xB6hne";
  std::string joined;
  for (const std::string& line : table_lines({{"a"}}, {{name}}, 7)) {
    CHECK(is_utf8(line));
    for (const char letter : line) {
      if (letter != ' ') joined += letter;
    }
  }
  CHECK(joined == name);
}

TEST_CASE("an empty cell is room, and no columns are no lines") {
  CHECK(table_lines({{"a"}, {"b"}}, {{"", "x"}}, 80) == Lines{"  x"});
  CHECK(table_lines({}, {{}}, 80).empty());
}

}  // namespace evenclaw
