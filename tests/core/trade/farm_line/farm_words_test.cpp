#include "core/trade/farm_line/farm_words.hpp"

#include <doctest/doctest.h>

#include <set>
#include <string>

#include "core/trade/call_line/lexer.hpp"

namespace evenclaw {

TEST_CASE("no word of the farm lines means two things in one language") {
  for (const Language* language : {&english(), &german()}) {
    std::set<std::string_view> seen;
    for (const FarmPhrase& phrase : farm_phrases(*language)) {
      CAPTURE(phrase.words);
      CHECK(seen.insert(phrase.words).second);
    }
  }
}

TEST_CASE("each word is written as the lexer folds it, so that it can be met") {
  for (const FarmPhrase& phrase : farm_phrases(german())) {
    CAPTURE(phrase.words);
    std::string folded;
    for (const Token& token : tokens_of(phrase.words)) {
      const bool is_word = token.kind == TokenKind::word;
      folded +=
          (folded.empty() ? "" : " ") +
          (is_word ? token.folded : std::string(phrase.words.substr(token.offset, token.length)));
    }
    CHECK(folded == phrase.words);
  }
}

TEST_CASE("what is told to say is said in the language of the day") {
  CHECK(say(FarmWord::scale, english()) == "scale");
  CHECK(say(FarmWord::scale, german()) == "skala");
}

}  // namespace evenclaw
