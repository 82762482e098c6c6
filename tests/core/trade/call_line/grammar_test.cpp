#include "core/trade/call_line/grammar.hpp"

#include <doctest/doctest.h>

#include <algorithm>

using namespace evenclaw;

namespace {

template <class F>
void for_each_spot(F look) {
  for (std::size_t i = 0; i < spot_count; ++i) look(static_cast<Spot>(i));
}

}  // namespace

TEST_CASE("every spot stands in the table at its own row") {
  for_each_spot([](Spot spot) { CHECK(facts_of(spot).spot == spot); });
}

TEST_CASE("what may stand at a spot is just what the parser takes there") {
  for_each_spot([](Spot spot) {
    const std::vector<TermKind> kinds = kinds_after(spot);
    for (std::size_t i = 0; i < term_kind_count; ++i) {
      const auto kind = static_cast<TermKind>(i);
      const bool is_told = std::find(kinds.begin(), kinds.end(), kind) != kinds.end();
      CHECK(is_told == (step_from(spot, kind) != nullptr));
    }
  });
}

TEST_CASE("taking over the steps of other spots comes to an end") {
  for_each_spot([](Spot spot) {
    std::size_t handed_on = 0;
    while (facts_of(spot).otherwise != spot && handed_on <= spot_count) {
      spot = facts_of(spot).otherwise;
      ++handed_on;
    }
    CHECK(handed_on < 5);
  });
}

TEST_CASE("where a line may not end, something may follow") {
  for_each_spot([](Spot spot) {
    if (!facts_of(spot).still_needs.empty()) CHECK_FALSE(kinds_after(spot).empty());
  });
}

TEST_CASE("free words may stand just where a step takes them") {
  for_each_spot([](Spot spot) {
    const Step* step = step_from(spot, TermKind::text);
    CHECK((step != nullptr) == (facts_of(spot).text != TextExtent::none));
  });
}

TEST_CASE("every spot can be reached") {
  for_each_spot([](Spot wanted) {
    const bool is_start = wanted == Spot::first_without_cow || wanted == Spot::first_with_cow ||
                          wanted == Spot::news_first;
    bool is_reached = is_start;
    for_each_spot([&](Spot from) {
      for (const TermKind kind : kinds_after(from)) {
        is_reached = is_reached || step_from(from, kind)->to == wanted;
      }
    });
    CAPTURE(static_cast<int>(wanted));
    CHECK(is_reached);
  });
}
