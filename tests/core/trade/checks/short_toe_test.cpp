#include <doctest/doctest.h>

#include "tests/core/trade/told_lines.hpp"

using namespace evenclaw;
using namespace evenclaw::told;

TEST_CASE("a toe is asked about below 75 mm and stopped below 70 mm") {
  CHECK(fired_on("412\nLH outside length 75 mm").empty());
  CHECK(fired_on("412\nLH outside length 74.9 mm") == Names{"ask toe-short LH"});
  CHECK(fired_on("412\nLH outside length 70 mm") == Names{"ask toe-short LH"});
  CHECK(fired_on("412\nLH outside length 69.9 mm") == Names{"stop toe-far-too-short LH"});
}

TEST_CASE("one warning for her, about her shortest toe") {
  CHECK(fired_on("412\nLH outside length 72 mm; inside length 71 mm\nRH outside length 74 mm") ==
        Names{"ask toe-short LH"});
  CHECK(fired_on("412\nLH outside length 72 mm\nRH outside length 68 mm") ==
        Names{"stop toe-far-too-short RH"});
}

TEST_CASE("other measures are no toe lengths") {
  CHECK(fired_on("412\nLH outside heel height 35 mm; sole thickness 6 mm").empty());
}

TEST_CASE("of a heifer no value holds") {
  CHECK(fired_on("412 heifer\nLH outside length 68 mm").empty());
  CHECK(fired_on("412 fresh, heifer\nLH outside length 68 mm").empty());
}

TEST_CASE("a long toe is never said to be right") {
  CHECK(told_day("412\nLH outside length 90 mm").warnings().empty());
}

TEST_CASE("the words say for whom the figure holds") {
  CHECK(told_day("412\nLH outside length 72 mm").warnings()[0].words ==
        "Toe 72 mm (left hind outside): short for a large adult. Sole firm?");
  CHECK(told_day("412\nLH outside length 68.5 mm").warnings()[0].words ==
        "Toe 68.5 mm (left hind outside): no more off; in a large adult the sole is too thin.");
}
