// A farm walk from the command line.
#include <doctest/doctest.h>

#include "tests/cli/one_cow.hpp"

namespace evenclaw::test {

TEST_CASE("Measures are acknowledged and shown with the herd, beside what they are compared with") {
  const OneCowRecorded home;
  const Ran ran = home.workshop.run({"walk", "--day", "2024-02-05"},
                                    "place old shed\ncubicles 115 wide 180 long, 10 looked at\n"
                                    "grip not looked at\n");
  CHECK(ran.exit == 0);
  CHECK(has(ran.out, "saved cubicle width 1.15 m, 10 looked at "));
  const Ran shown = home.workshop.run({"show", "herd"});
  CHECK(has(shown.out, "Farm walks\n"));
  CHECK(has(shown.out, "old shed"));
  CHECK(has(shown.out, "grip: not looked at"));
}

TEST_CASE("A bare number that may be anything is refused with what to say") {
  const OneCowRecorded home;
  const Ran ran = home.workshop.run({"walk"}, "footbath 3 long\n");
  CHECK(ran.exit == 1);
  CHECK(has(ran.out, "\"3\" needs its unit; say \"3 m\""));
}

}  // namespace evenclaw::test
