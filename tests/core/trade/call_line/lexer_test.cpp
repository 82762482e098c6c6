#include "core/trade/call_line/lexer.hpp"

#include <doctest/doctest.h>

#include <string>

#include "core/base/random.hpp"

using namespace evenclaw;

namespace {

// "412? LH" -> "n? w": one letter or sign per token.
std::string kinds_of(std::string_view line) {
  std::string text;
  for (const Token& token : tokens_of(line)) {
    constexpr std::string_view signs = "wndq,:;&?x";
    text += signs[static_cast<std::size_t>(token.kind)];
  }
  return text;
}

std::string words_of(std::string_view line) {
  std::string text;
  for (const Token& token : tokens_of(line)) {
    if (token.kind == TokenKind::word) text += (text.empty() ? "" : "|") + token.folded;
  }
  return text;
}

}  // namespace

TEST_CASE("a line is cut into words, numbers and marks") {
  struct Row {
    std::string_view line;
    std::string_view kinds;
  };

  constexpr Row rows[] = {
      {"", ""},
      {"   \t ", ""},
      {"412 lame LH", "nww"},
      {"412? 7.5cm 28d", "n?nwnw"},
      {"a, b; c. d: e", "w,w;w;w:w"},
      {"LH & RH + LF / RF", "w&w&w&w"},
      {"a \xC2\xB7 b", "w;w"},
      {"a - b \xE2\x80\x93 c", "w,w,w"},
      {"white-line", "ww"},
      {"\"two words\" x", "qw"},
      {"\"say \"\"so\"\" now\" x", "qw"},
      {"\xE2\x80\x9Ctwo words\xE2\x80\x9D x", "qw"},
      {"12\" long", "nxw"},
      {"@ # \xE2\x82\xAC", "xxw"},
      {"412.", "n;"},
      {"412.LH", "n;w"},
  };
  for (const Row& row : rows) {
    CAPTURE(row.line);
    CHECK(kinds_of(row.line) == row.kinds);
  }
}

TEST_CASE("words lose capitals, apostrophes and hyphens") {
  CHECK(words_of("White-Line ABSCESS") == "white|line|abscess");
  CHECK(words_of("don't don\xE2\x80\x99t") == "dont|dont");
  CHECK(words_of("\xC3\x89T\xC3\x89") == "\xC3\xA9t\xC3\xA9");
}

TEST_CASE("letters that many keyboards lack are read as they are spelt out there") {
  CHECK(words_of("Gr\xC3\x9CN \xC3\x84 \xC3\xB6 Fu\xC3\x9F") == "gruen|ae|oe|fuss");
}

TEST_CASE("a day in the form of a date is one token, and what is none of the calendar is not") {
  CHECK(kinds_of("till 2026-10-09") == "wd");
  CHECK(kinds_of("2026-10-09, LH") == "d,w");
  CHECK(kinds_of("2026-02-30") == "n,n,n");
  CHECK(kinds_of("2026-10-091") == "n,n,n");
  CHECK(kinds_of("2026-1-9") == "n,n,n");
}

TEST_CASE("the stage M4.1 is one word and a full stop behind a word is none of it") {
  CHECK(words_of("M4.1") == "m4.1");
  CHECK(kinds_of("RH. LH") == "w;w");
  CHECK(words_of("z4.") == "z4");
}

TEST_CASE("tokens know their place in bytes and columns count characters") {
  const std::string line = "gr\xC3\xBCn LH";
  const std::vector<Token> tokens = tokens_of(line);
  REQUIRE(tokens.size() == 2);
  CHECK(tokens[1].offset == 6);
  CHECK(tokens[1].length == 2);
  CHECK(column_at(line, tokens[1].offset) == 6);
  CHECK(column_at(line, 0) == 1);
}

TEST_CASE("between the tokens of a line lie only spaces and hyphens") {
  const std::string line = " 412,lame-on \"x;y\" don't;  z4?";
  std::string rest = line;
  for (const Token& token : tokens_of(line)) {
    rest.replace(token.offset, token.length, token.length, ' ');
  }
  CHECK(rest.find_first_not_of(" -") == std::string::npos);
}

TEST_CASE("quotes come off and doubled quotes become one") {
  CHECK(unquoted("\"two words\"") == "two words");
  CHECK(unquoted("\"say \"\"so\"\"\"") == "say \"so\"");
  CHECK(unquoted("\xE2\x80\x9Cso\xE2\x80\x9D") == "so");
  CHECK(unquoted("\"\"").empty());
}

TEST_CASE("the number of an ear tag may have a blank behind the country, at the start only") {
  const std::vector<Token> tokens = tokens_of(" 276 000312312345 lame LH");
  REQUIRE(tokens.size() == 3);
  CHECK(tokens[0].folded == "276000312312345");
  CHECK(tokens[0].offset == 1);
  CHECK(tokens[0].length == 16);
  CHECK(tokens_of("276 00031231234 lame").size() == 3);
  CHECK(tokens_of("no 276 000312312345").size() == 3);
}

TEST_CASE("bytes that are no text make tokens within the line") {
  RandomStream random(7, 3);
  for (int i = 0; i < 2000; ++i) {
    std::string line;
    const std::uint32_t length = random.below(40);
    for (std::uint32_t at = 0; at < length; ++at) line += static_cast<char>(random.below(256));
    std::size_t end = 0;
    for (const Token& token : tokens_of(line)) {
      REQUIRE(token.length > 0);
      REQUIRE(token.offset >= end);
      end = token.offset + token.length;
      REQUIRE(end <= line.size());
    }
  }
}
