#include "core/trade/call_line/news_by_looks.hpp"

#include <doctest/doctest.h>

#include <string>
#include <vector>

using namespace evenclaw;

namespace {

std::optional<Line> told(std::string_view line) {
  const std::vector<std::string> names = {"red cow", "brown heifer, white star", "red"};
  return news_by_looks(line, names, {}, english());
}

NewsSaid news_in(std::string_view line, std::size_t at = 0) {
  const auto read = told(line);
  INFO(line);
  REQUIRE(read);
  REQUIRE(read->clauses.size() > at);
  return std::get<NewsSaid>(read->clauses[at]);
}

}  // namespace

TEST_CASE("news of a cow without a number names her by what she looks like") {
  CHECK(news_in("red cow wrap off").number == "red cow");
  CHECK(news_in("The Red Cow, wrap off LH").number == "red cow");
  CHECK(news_in("The Red Cow, wrap off LH").feet == FootSet{Foot::lh});
  CHECK(news_in("brown heifer, white star: gone").number == "brown heifer, white star");
  CHECK(news_in("red still lame").number == "red");
}

TEST_CASE("what else the line tells is of the number it names") {
  CHECK(news_in("red cow wrap off; 77 gone", 1).number == "77");
}

TEST_CASE("a line that does not begin with her, or tells no news, is none of her") {
  for (const char* line : {"red cow", "redcow wrap off", "wrap off red cow", "red cow LH SU",
                           "reddish wrap off", "brown heifer wrap off"}) {
    CAPTURE(line);
    CHECK_FALSE(told(line));
  }
}
