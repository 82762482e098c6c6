#include "core/trade/call_line/quoted_words.hpp"

#include <doctest/doctest.h>

#include "tests/core/trade/call_line/enciphered.hpp"
#include "tests/core/trade/call_line/saying.hpp"

using namespace evenclaw;

namespace {

std::string in_cipher(std::string_view sentence) {
  return with_quoted_words(sentence, enciphered::language());
}

/// What stands between double quotes, parted by " | ".
std::string quoted_in(const std::string& text) {
  std::string all;
  std::size_t open = text.find('"');
  while (open != std::string::npos) {
    const std::size_t close = text.find('"', open + 1);
    all += (all.empty() ? "" : " | ") + text.substr(open + 1, close - open - 1);
    open = close == std::string::npos ? close : text.find('"', close + 1);
  }
  return all;
}

}  // namespace

TEST_CASE("what a sentence quotes is said in the words of the day, the rest stays") {
  CHECK(in_cipher("say \"{no, LH}\" or {412, 513 wraps off}") ==
        "say \"" + enciphered::said("no, LH") + "\" or " +
            enciphered::said("412, 513 wraps taken off"));
  CHECK(in_cipher("as {z4}, {28d} or {78 mm}") == "as " + enciphered::said("z4") + ", " +
                                                      enciphered::said("28d") + " or " +
                                                      enciphered::said("78 mm"));
  CHECK(in_cipher("nothing is quoted") == "nothing is quoted");
}

TEST_CASE("in English a sentence quotes as it was written") {
  CHECK(with_quoted_words("say \"{no, right hind}\"; {and}", english()) ==
        "say \"no, right hind\"; and");
}

TEST_CASE("braces that somebody typed stay") {
  for (const char* text : {"{brown cow}", "{", "}", "} {", "412 {LH"}) {
    CHECK(with_quoted_words(text, english()) == text);
    CHECK(in_cipher(text) == text);
  }
}

TEST_CASE("a refusal proposes words of the language the line was said in") {
  struct Row {
    const char* line;
    const char* proposed;
  };

  constexpr Row rows[] = {{"no, not that one", "no, inside | no, RH | no, 421 | no, no block on"},
                          {"ditto", ""},
                          {"LH SU side", "white line at the side | outer wall"},
                          {"LH bruise; no, sole ulcer", "no, no sole ulcer"},
                          {"LH DD; off Thu", "wrap on, off Thu | wrap taken off"},
                          {"LH outsde SU", "outside"}};
  for (const Row& row : rows) {
    CAPTURE(row.line);
    const Faults faults =
        saying::faults_of(enciphered::said(row.line), true, enciphered::language());
    REQUIRE_FALSE(faults.empty());
    CHECK(enciphered::in_english(quoted_in(faults.front().remedy)) == row.proposed);
  }
}
