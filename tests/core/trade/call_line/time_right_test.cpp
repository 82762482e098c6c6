#include "core/trade/call_line/time_right.hpp"

#include <doctest/doctest.h>

#include <string_view>

using namespace evenclaw;

namespace {

bool has_time(std::string_view text) {
  const std::vector<Token> tokens = tokens_of(text);
  const Language::Match match = english().longest_match(tokens, 0);
  REQUIRE(match.phrase != nullptr);
  Term word;
  word.kind = match.phrase->kind;
  word.token_count = match.word_count;
  return has_its_time(word, tokens, english());
}

}  // namespace

TEST_CASE("an act has its time behind it, and what may stand between is passed over") {
  for (const char* text :
       {"wrap 5d", "wrap off 5d", "block in, off 4 weeks", "see again Thu", "see again in 3 days",
        "milk till Thu", "wrap off tomorrow", "see again 2026-12-01"}) {
    CAPTURE(text);
    CHECK(has_time(text));
  }
  for (const char* text :
       {"wrap", "wrap; off 5d", "wrap 5", "block inside", "block inside, spray"}) {
    CAPTURE(text);
    CHECK_FALSE(has_time(text));
  }
  CHECK(has_time("bruise"));
}
