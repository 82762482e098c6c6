#include "core/trade/call_line/spoken_numbers.hpp"

#include <doctest/doctest.h>

#include <string>

#include "tests/core/trade/call_line/saying.hpp"

using namespace evenclaw;

namespace {

// The digits of the numbers in a line, parted by spaces.
std::string numbers_in(std::string_view line) {
  std::string all;
  for (const Token& token : with_spoken_numbers(tokens_of(line), english())) {
    if (token.kind != TokenKind::number) continue;
    if (!all.empty()) all += ' ';
    all += token.folded.empty() ? line.substr(token.offset, token.length)
                                : std::string_view(token.folded);
  }
  return all;
}

}  // namespace

TEST_CASE("a number said in words is the number") {
  struct Row {
    const char* said;
    const char* digits;
  };

  constexpr Row rows[] = {{"four twelve", "412"},
                          {"four-twelve lame", "412"},
                          {"four one two", "412"},
                          {"four hundred and twelve", "412"},
                          {"four hundred twelve", "412"},
                          {"four hundred", "400"},
                          {"twelve thirty four", "1234"},
                          {"twelve thirty-four", "1234"},
                          {"four oh two", "402"},
                          {"twenty one", "21"},
                          {"see again in four weeks", "4"},
                          {"see again in fourteen days", "14"},
                          {"mobility two of three", "2 3"},
                          {"length seventy eight mm", "78"},
                          {"a hundred and seven", "107"},
                          {"a hundred gone", "100"},
                          {"a thousand two hundred", "1200"}};
  for (const Row& row : rows) {
    CAPTURE(row.said);
    CHECK(numbers_in(row.said) == row.digits);
  }
}

TEST_CASE("a number word that belongs to a phrase or stands alone stays a word") {
  CHECK(numbers_in("all four").empty());
  CHECK(numbers_in("all four feet trimmed").empty());
  CHECK(numbers_in("four").empty());
  CHECK(numbers_in("next one please").empty());
  CHECK(numbers_in("hundred weeks").empty());
}

TEST_CASE("a cow, a time and news are called in number words") {
  CHECK(saying::printed({"four-twelve lame LH"}) == "412 lame LH");
  CHECK(saying::printed({"four twelve", "LH SU; see again in four weeks"}) ==
        "412 // LH sole ulcer; see again 28d");
  CHECK(saying::printed({"412", "LH length seventy eight mm"}) == "412 // LH length 78 mm");
  CHECK(saying::printed({"no number, black, one horn, two white feet"}) ==
        "no number, black, one horn, two white feet");
  const Result<Line> news = read_line("five thirteen gone", saying::in_crush(false), english());
  REQUIRE(news.ok());
  CHECK(std::get<NewsSaid>(news->clauses.front()).number == "513");
}

TEST_CASE("a fault points at the words as they were said") {
  const Faults faults = saying::faults_of("LH SU; four twelve");
  REQUIRE(faults.size() == 1);
  CHECK(faults.front().token == "four twelve");
  CHECK(faults.front().column == 8);
}

TEST_CASE("thousands are said before hundreds") {
  CHECK(numbers_in("two thousand and five") == "2005");
  CHECK(numbers_in("four thousand one hundred and twenty three LH") == "4123");
  CHECK(numbers_in("twelve thousand") == "12000");
}

TEST_CASE("a number word that stands alone has a value and is no number") {
  CHECK(numbers_in("seven LH").empty());
  CHECK(number_word_at(tokens_of("seven LH"), 0, english()) == 7);
  CHECK_FALSE(number_word_at(tokens_of("seven LH"), 1, english()));
  CHECK_FALSE(number_word_at(tokens_of("seven"), 1, english()));
}
