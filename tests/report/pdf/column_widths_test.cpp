#include "report/pdf/column_widths.hpp"

#include <doctest/doctest.h>

namespace evenclaw {

TEST_CASE("Columns share a page by what they ask for") {
  struct Shared {
    const char* what;
    std::vector<ColumnNeed> needs;
    std::vector<double> widths;
  };

  const Shared table[] = {
      {"room for all: what is left goes in proportion", {{5, 10}, {5, 30}}, {25, 75}},
      {"not room for all: each its widest word first", {{20, 20}, {30, 130}}, {20, 80}},
      {"what a narrow column wants more it gets before wide ones share",
       {{10, 16}, {10, 200}, {10, 300}},
       {16, 42, 42}},
      {"not even room for the words: in proportion", {{100, 100}, {300, 400}}, {25, 75}},
      {"nothing asked for: equal parts", {{0, 0}, {0, 0}}, {50, 50}},
      {"no columns", {}, {}},
  };
  for (const Shared& one : table) {
    CAPTURE(one.what);
    const std::vector<double> widths = column_widths(one.needs, 100);
    REQUIRE(widths.size() == one.widths.size());
    for (std::size_t i = 0; i < widths.size(); ++i) {
      CHECK(widths[i] == doctest::Approx(one.widths[i]).epsilon(0.001));
    }
  }
}

}  // namespace evenclaw
