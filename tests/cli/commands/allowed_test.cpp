// What local law lets the trimmer do, as a business settles it.
#include <doctest/doctest.h>

#include "tests/cli/program.hpp"

namespace evenclaw::test {
TEST_CASE("Every act is the vet's until the business says otherwise") {
  const Workshop workshop;
  REQUIRE(workshop.run({"start", "Home Farm", "--new-herd", "--feet", "all"}).exit == 0);
  const std::string before = workshop.run({"allowed"}).out;
  CHECK(has(before, "Country: not said\ninjection: the vet's\n"));
  CHECK(workshop.run({"allowed", "country", "de"}).exit == 0);
  CHECK(workshop.run({"allowed", "injection", "yes"}).exit == 0);
  const std::string after = workshop.run({"allowed"}).out;
  CHECK(has(after, "Country: DE\ninjection: the trimmer may, says this business\n"));
  CHECK(has(after, "anaesthesia: the vet's\n  only vets can provide anaesthesia: Kümper"));
}

TEST_CASE("What is neither a country nor an act with yes or no is refused") {
  const Workshop workshop;
  REQUIRE(workshop.run({"start", "Home Farm", "--new-herd", "--feet", "all"}).exit == 0);
  CHECK(workshop.run({"allowed", "injection", "maybe"}).exit == 2);
  CHECK(workshop.run({"allowed", "injection"}).exit == 2);
  CHECK(workshop.run({"allowed", "country", "England"}).exit == 2);
}

}  // namespace evenclaw::test
