#include "core/trade/call_line/spoken_tokens.hpp"

#include <doctest/doctest.h>

#include <string>

using namespace evenclaw;

namespace {

// The tokens as they are read, each with the words as typed.
std::string tokens_in(std::string_view line) {
  std::string all;
  for (const Token& token : spoken_tokens(line, english())) {
    if (!all.empty()) all += ' ';
    all += token.folded + '<' + std::string(line.substr(token.offset, token.length)) + '>';
  }
  return all;
}

}  // namespace

TEST_CASE("a short word is read in full and kept as typed") {
  CHECK(tokens_in("rest's fine") == "rest<rest> is<'s> fine<fine>");
  CHECK(tokens_in("Block\u2019s gone") == "block<Block> is<\u2019s> gone<gone>");
}

TEST_CASE("a block that is off is not all blocks off") {
  CHECK(tokens_in("block's off") == "block<block> is<'s> off<off>");
  CHECK(tokens_in("blocks off") == "blocks<blocks> off<off>");
}

TEST_CASE("another apostrophe stays in its word") {
  CHECK(tokens_in("don't know her") == "dont<don't> know<know> her<her>");
  CHECK(tokens_in("o'clock") == "oclock<o'clock>");
}

TEST_CASE("a word that a phrase spells with its apostrophe is not taken apart") {
  CHECK(tokens_in("by the vet's plan") == "by<by> the<the> vets<vet's> plan<plan>");
}

TEST_CASE("numbers in words are put together as well") {
  CHECK(tokens_in("four-twelve LH") == "412<four-twelve> lh<LH>");
}

TEST_CASE("what is said begins behind separators and joining words") {
  struct Row {
    const char* line;
    std::size_t first;
  };

  constexpr Row rows[] = {{"413 LH", 0},    {"and 413 LH", 1}, {"- 413 LH", 1}, {"; and 413", 2},
                          {"LH and RH", 0}, {"and", 1},        {"", 0},         {", , 413", 2}};
  for (const Row& row : rows) {
    CAPTURE(row.line);
    CHECK(first_said(spoken_tokens(row.line, english()), english()) == row.first);
  }
}
