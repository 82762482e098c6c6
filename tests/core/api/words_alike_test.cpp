#include "core/api/words_alike.hpp"

#include <doctest/doctest.h>

#include <algorithm>

#include "core/trade/call_line/language.hpp"

using namespace evenclaw;

namespace {

bool is_a_phrase(const Language& language, std::string_view words) {
  const auto phrases = language.phrases();
  return std::any_of(phrases.begin(), phrases.end(),
                     [&](const Phrase& phrase) { return phrase.words == words; });
}

}  // namespace

TEST_CASE("who is dead died, and who was sold was not culled") {
  CHECK(alike_to("dead") == "died");
  CHECK(alike_to("died") == "died");
  CHECK(alike_to("tot") == "verendet");
  CHECK(alike_to("sold") == "sold");
  CHECK(alike_to("culled") == "culled");
  CHECK(alike_to("") == "");
}

TEST_CASE("both words stand in the table of their language") {
  CHECK(is_a_phrase(english(), "dead"));
  CHECK(is_a_phrase(english(), alike_to("dead")));
  CHECK(is_a_phrase(german(), "tot"));
  CHECK(is_a_phrase(german(), alike_to("tot")));
}
