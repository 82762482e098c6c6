#include "core/sheets/words_heard.hpp"

#include <doctest/doctest.h>

namespace evenclaw {

TEST_CASE("a phrase is heard as whole words, also misspelt, and never in a word of the call line") {
  const struct {
    const char* said;
    const char* phrase;
    bool is_heard;
  } rows[] = {{"withdrawl 4d", "withdrawal", true},
              {"LH injcted with it", "injected", true},
              {"the dry cow tubes", "dry cow tubes", true},
              {"tunes on the radio", "tubes", false},
              {"tubs", "tubes", false},
              {"heat", "meat", false},
              {"\"7 milk 3 milkings\"", "milk", true},
              {"milked", "milk", false},
              {"gives", "given", false},
              {"", "milk", false},
              {"milk", "", false}};

  for (const auto& row : rows) {
    CHECK_MESSAGE(holds_phrase(heard_words(row.said), row.phrase) == row.is_heard, row.said);
  }
}

TEST_CASE("words of the call line are known, also inside a phrase") {
  CHECK(is_word_of_the_call("on"));
  CHECK(is_word_of_the_call("trimmed"));
  CHECK_FALSE(is_word_of_the_call("xyzq"));
}

}  // namespace evenclaw
