#include "report/pdf/font_map.hpp"

#include <doctest/doctest.h>

#include "tests/report/pdf/shipped_fonts.hpp"

namespace evenclaw {

TEST_CASE("A program that makes one page after another reads its fonts once") {
  const auto first = font_map(test::shipped_fonts(), FontReach::shipped);
  const auto second = font_map(test::shipped_fonts(), FontReach::shipped);
  REQUIRE(first.ok());
  REQUIRE(second.ok());
  CHECK(*first == *second);
}

TEST_CASE("Other fonts, and fonts of the machine beside ours, are other maps") {
  const std::vector<PrintFont> fonts = test::shipped_fonts();
  const auto both = font_map(fonts, FontReach::shipped);
  const auto one = font_map({fonts[0]}, FontReach::shipped);
  const auto machine = font_map(fonts, FontReach::machine);
  REQUIRE(both.ok());
  REQUIRE(one.ok());
  REQUIRE(machine.ok());
  CHECK(*both != *one);
  CHECK(*both != *machine);
}

}  // namespace evenclaw
