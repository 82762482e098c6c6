// Changes of the farm from the command line.
#include <doctest/doctest.h>

#include "tests/cli/one_cow.hpp"

namespace evenclaw::test {

TEST_CASE("A change is told, finished later, and shown with the herd") {
  const OneCowRecorded home;
  const Ran told = home.workshop.run({"change", "--day", "2024-10-02"},
                                     "footbath: copper; bad visit; decided 1 Oct; going on; whole "
                                     "herd\n");
  CHECK(told.exit == 0);
  CHECK(has(told.out, "saved footbath: copper "));
  REQUIRE(home.workshop.run({"change", "--day", "2024-10-21"}, "footbath finished 20 Oct\n").exit ==
          0);
  CHECK(has(home.workshop.run({"show", "herd"}).out, "finished 2024-10-20"));
}

TEST_CASE("A change of which nobody said why leaves the question, and the exit code says so") {
  const OneCowRecorded home;
  const Ran told = home.workshop.run({"change", "--day", "2024-10-02"}, "floor: rubber\n");
  CHECK(told.exit == 1);
  CHECK(has(told.out, "why was it made?"));
}

}  // namespace evenclaw::test
