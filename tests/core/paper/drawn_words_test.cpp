#include "core/paper/drawn_words.hpp"

#include <doctest/doctest.h>

namespace evenclaw {

TEST_CASE("Words in a drawing are broken at spaces and none is lost") {
  const auto lines = drawn_lines("cows that  came lame", 3, 20);
  CHECK(lines == std::vector<std::string>{"cows that", "came lame"});
  CHECK(drawn_lines("", 3, 20).empty());
  CHECK(drawn_lines("heelhornerosionandmore", 3, 5).size() == 1);
}

TEST_CASE("Words beside each other move apart as little as they must") {
  struct Moved {
    const char* what;
    std::vector<double> wanted;
    std::vector<double> places;
  };

  const Moved table[] = {
      {"far enough apart already", {5, 20}, {5, 20}},
      {"two at one place, kept in their order", {10, 10}, {10, 13}},
      {"pushed back by the lower edge", {29, 30}, {27, 30}},
      {"never over the upper edge", {-4, 8}, {0, 8}},
      {"in the order of their places, not of their names", {12, 10}, {13, 10}},
      {"none", {}, {}},
  };
  for (const Moved& one : table) {
    CAPTURE(one.what);
    CHECK(apart(one.wanted, {0, 30, 3}) == one.places);
  }
}

}  // namespace evenclaw
