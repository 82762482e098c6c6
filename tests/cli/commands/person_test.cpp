// Who calls and writes, and taking a name away for good.
#include <doctest/doctest.h>

#include "tests/cli/program.hpp"

namespace evenclaw::test {
TEST_CASE("A name that was erased stands nowhere any more, and the work stays") {
  const Workshop workshop;
  REQUIRE(workshop
              .run({"start", "Home Farm", "--new-herd", "--feet", "all", "--caller", "Anna",
                    "--writer", "Ben"})
              .exit == 0);
  REQUIRE(workshop.run({"record", "-"}, "412 LH sole ulcer\nrest fine\ndone\n").exit == 0);
  CHECK(workshop.run({"person", "list"}).out == "Anna\nBen\n");
  CHECK(workshop.run({"person", "remove", "Ben"}).exit == 0);
  CHECK(workshop.run({"person", "list"}).out == "Anna\nperson removed\n");
  CHECK_FALSE(has(workshop.run({"log"}).out, "Ben"));
  CHECK_FALSE(has(bytes_of(workshop.records()), "Ben"));
  CHECK(has(workshop.run({"show", "cow", "412"}).out, "sole ulcer"));
}

TEST_CASE("Somebody nobody knows cannot be removed, and nothing is changed by trying") {
  const Workshop workshop;
  REQUIRE(workshop.run({"start", "Home Farm", "--new-herd", "--caller", "Anna"}).exit == 0);
  const Ran ran = workshop.run({"person", "remove", "Carl"});
  CHECK(ran.exit == 1);
  CHECK(has(ran.err, "(person-not-found)"));
  CHECK(workshop.run({"person", "list"}).out == "Anna\n");
}

TEST_CASE("Whoever is to be removed must be named, and only one at a time") {
  const Workshop workshop;
  REQUIRE(workshop.run({"start", "Home Farm", "--new-herd", "--caller", "Anna"}).exit == 0);
  for (const std::vector<std::string>& words : {std::vector<std::string>{"person", "remove"},
                                                {"person", "list", "Anna"},
                                                {"person", "erase", "Anna"}}) {
    CHECK(workshop.run(words).exit == 2);
  }
  CHECK(workshop.run({"person", "list"}).out == "Anna\n");
}

}  // namespace evenclaw::test
