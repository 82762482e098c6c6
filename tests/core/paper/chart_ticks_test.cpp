#include "core/paper/chart_ticks.hpp"

#include <doctest/doctest.h>

#include <limits>

#include "core/base/random.hpp"

namespace evenclaw {
namespace {

std::string words_of(Range range, int about) {
  std::string words;
  for (const Tick& tick : nice_ticks(range, about)) words += (words.empty() ? "" : " ") + tick.text;
  return words;
}

}  // namespace

TEST_CASE("An axis is divided at round numbers that reach round what is shown") {
  struct Divided {
    Range range;
    int about;
    const char* words;
  };

  const Divided table[] = {
      {{0, 100}, 5, "0 20 40 60 80 100"},
      {{3, 97}, 5, "0 20 40 60 80 100"},
      {{0, 1}, 5, "0 0.2 0.4 0.6 0.8 1"},
      {{0.02, 0.31}, 4, "0 0.1 0.2 0.3 0.4"},
      {{-12, 7}, 4, "−15 −10 −5 0 5 10"},
      {{1234, 1260}, 5, "1230 1240 1250 1260"},
      {{0, 3e6}, 3, "0 1000000 2000000 3000000"},
      {{0, 0.003}, 3, "0 0.001 0.002 0.003"},
      {{7, 7}, 5, "6 6.5 7 7.5 8"},
      {{9, 2}, 5, "2 4 6 8 10"},
  };
  for (const Divided& one : table) {
    CAPTURE(one.words);
    CHECK(words_of(one.range, one.about) == std::string(one.words));
  }
}

TEST_CASE("Whatever is shown lies between the first and the last number") {
  RandomStream draw(1, 1);
  for (int i = 0; i < 2000; ++i) {
    const double middle = (draw.uniform() - 0.5) * 1e6;
    const double least = draw.chance(0.5) ? middle : middle / 1e7;
    const double most = least + draw.exponential() * (draw.chance(0.5) ? 1e5 : 1e-3);
    const int about = 1 + static_cast<int>(draw.below(8));
    const auto ticks = nice_ticks({least, most}, about);
    CAPTURE(least);
    CAPTURE(most);
    const double hair = (ticks[1].value - ticks[0].value) * 1e-8;
    REQUIRE(ticks.size() >= 2);
    CHECK(ticks.size() <= static_cast<std::size_t>(2 * about + 2));
    CHECK(ticks.front().value <= least + hair);
    CHECK(ticks.back().value >= most - hair);
  }
}

TEST_CASE("Numbers too large to be shown are cut, not shown wrong") {
  const double huge = std::numeric_limits<double>::max();
  CHECK(words_of({-huge, huge}, 2) == "−1000000000000 0 1000000000000");
}

}  // namespace evenclaw
