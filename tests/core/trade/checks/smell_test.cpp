#include <doctest/doctest.h>

#include "tests/core/trade/told_lines.hpp"

using namespace evenclaw;
using namespace evenclaw::told;

TEST_CASE("a foot that stinks is asked about until the vet is called or the smell has a name") {
  CHECK(fired_on("412\nRH it stinks") == Names{"ask it-stinks RH"});
  CHECK(fired_on("412\nRH note: very wet and it smells") == Names{"ask it-stinks RH"});
  CHECK(fired_on("412\nRH it stinks; vet").empty());
  CHECK(fired_on("412\nRH slurry heel; it stinks").empty());
  CHECK(fired_on("412\nRH outside sole ulcer, DD in it; it stinks").empty());
}
