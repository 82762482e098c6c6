// Mobility scores from the command line.
#include <doctest/doctest.h>

#include "tests/cli/one_cow.hpp"

namespace evenclaw::test {

TEST_CASE("Scores are acknowledged one by one, and the whole is told at the end") {
  const OneCowRecorded home;
  const Ran ran = home.workshop.run({"score", "--by", "Anna", "--sure"},
                                    "scale 0 to 3\n3 present\n412 2 LH\n1 at 0\n");
  CHECK(ran.exit == 0);
  CHECK(has(ran.out, "saved 412 "));
  CHECK(has(ran.out, "saved 1 at 0 "));
  CHECK(has(ran.out, "2 of 3 present scored: 1 at 0, 0 at 1, 1 at 2, 0 at 3"));
  CHECK(has(home.workshop.run({"show", "cow", "412"}).out,
            "scored 2 on the scale 0 to 3, lame LH (in the crush the same day)"));
  CHECK(has(home.workshop.run({"show", "herd"}).out, "Mobility scorings\n"));
}

TEST_CASE("A score without a scale leaves a question, and the exit code says so") {
  const OneCowRecorded home;
  const Ran ran = home.workshop.run({"score", "--json"}, "412 2\n");
  CHECK(ran.exit == 1);
  CHECK(has(ran.out, "\"refused\""));
  CHECK(has(ran.out, "\"line\""));
}

TEST_CASE("A day that has not come is no day on which cows were watched") {
  const OneCowRecorded home;
  const Ran ran = home.workshop.run({"score", "--day", "2999-01-01"}, "scale 0 to 3\n412 2\n");
  CHECK(ran.exit != 0);
  CHECK(has(ran.err, "date-in-future"));
}

TEST_CASE("A file given again records nothing twice") {
  const OneCowRecorded home;
  const std::string file = home.workshop.file("monday.scores");
  write_bytes(file, "scale 1 to 5\n412 3\n40 at 1\n");
  REQUIRE(home.workshop.run({"score", file}).exit == 0);
  const Ran again = home.workshop.run({"score", file});
  CHECK(has(again.out, "there already 412"));
  CHECK(has(again.out, "41 scored"));
}

}  // namespace evenclaw::test
