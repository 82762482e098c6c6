#include "core/trade/leaving_words.hpp"

#include <doctest/doctest.h>

#include <set>
#include <string_view>

namespace evenclaw {

TEST_CASE("each word for leaving stands once, and every way but none has some") {
  std::set<std::string_view> words;
  std::set<LeavingWay> ways;
  for (const LeavingWord& word : leaving_words()) {
    CHECK_MESSAGE(words.insert(word.words).second, word.words);
    CHECK(leaving_way(word.words) == word.way);
    ways.insert(word.way);
  }
  CHECK(ways == std::set{LeavingWay::sold, LeavingWay::slaughtered, LeavingWay::died});
}

TEST_CASE("a word that tells no way is none, nor is a part of one") {
  CHECK_FALSE(leaving_way("gone"));
  CHECK_FALSE(leaving_way("sold today"));
  CHECK_FALSE(leaving_way(""));
}

}  // namespace evenclaw
