// What is told when the work in a yard is over.
#include <doctest/doctest.h>

#include "tests/cli/program.hpp"

namespace evenclaw::test {

namespace {

constexpr std::string_view title = "Before you leave the yard\n  [ ] ";

}  // namespace

TEST_CASE("What is done before leaving the yard is told once, when the visit ends") {
  const Workshop workshop;
  REQUIRE(workshop.run({"start", "Home Farm", "--new-herd", "--feet", "all"}).exit == 0);
  REQUIRE(workshop.run({"record", "-"}, "412 nothing found\ndone\n").exit == 0);
  const std::string today = workshop.run({"end"}).out;
  CHECK(has(today, title));
  REQUIRE(
      workshop
          .run({"start", "Home", "--feet", "all", "--day", "2024-03-05", "--from-paper", "--sure"})
          .exit == 0);
  CHECK_FALSE(has(workshop.run({"end"}).out, title));
}

}  // namespace evenclaw::test
