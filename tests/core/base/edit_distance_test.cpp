#include "core/base/edit_distance.hpp"

#include <doctest/doctest.h>

#include <string>

#include "core/base/random.hpp"

namespace evenclaw {

namespace {

struct Pair {
  const char* a;
  const char* b;
  std::size_t distance;
};

std::string random_word(RandomStream& random) {
  std::string word;
  const std::uint32_t length = random.below(8);
  for (std::uint32_t i = 0; i < length; ++i) word += static_cast<char>('a' + random.below(3));
  return word;
}

}  // namespace

TEST_CASE("the distance counts the fewest slips of the fingers") {
  constexpr Pair pairs[] = {{"", "", 0},
                            {"heel", "heel", 0},
                            {"", "toe", 3},
                            {"toe", "", 3},
                            {"hele", "heel", 1},
                            {"hel", "heel", 1},
                            {"heeel", "heel", 1},
                            {"herl", "heel", 1},
                            {"ehle", "heel", 2},
                            {"outisde", "outside", 1},
                            {"wrpa on", "wrap on", 1},
                            {"kitten", "sitting", 3},
                            {"ca", "abc", 3}};
  for (const Pair& pair : pairs) {
    CAPTURE(pair.a);
    CAPTURE(pair.b);
    CHECK(edit_distance(pair.a, pair.b) == pair.distance);
  }
}

TEST_CASE("the distance is symmetric, bounded by the lengths, and 0 for equal words only") {
  RandomStream random(11, 1);
  for (int i = 0; i < 2000; ++i) {
    const std::string a = random_word(random);
    const std::string b = random_word(random);
    CAPTURE(a);
    CAPTURE(b);
    const std::size_t distance = edit_distance(a, b);
    const std::size_t longer = a.size() > b.size() ? a.size() : b.size();
    const std::size_t shorter = a.size() > b.size() ? b.size() : a.size();
    REQUIRE(distance == edit_distance(b, a));
    REQUIRE(distance <= longer);
    REQUIRE(distance >= longer - shorter);
    REQUIRE((distance == 0) == (a == b));
  }
}

TEST_CASE("one slip is never more than one away") {
  RandomStream random(11, 2);
  for (int i = 0; i < 500; ++i) {
    const std::string word = "x" + random_word(random);
    const std::size_t at = random.below(static_cast<std::uint32_t>(word.size()));
    std::string dropped = word;
    dropped.erase(at, 1);
    std::string doubled = word;
    doubled.insert(at, 1, 'z');
    REQUIRE(edit_distance(word, dropped) == 1);
    REQUIRE(edit_distance(word, doubled) == 1);
  }
}

}  // namespace evenclaw
