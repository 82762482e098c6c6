// Inventing a business on the command line. What it records is tried in tests/demo.
#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>
#include <string>

#include "tests/cli/program.hpp"

namespace evenclaw::test {

TEST_CASE("A neutral table of claws has a line for each claw, and is the same for one seed") {
  const Workshop workshop;
  const std::string first = workshop.file("first.csv");
  const std::string second = workshop.file("second.csv");
  for (const std::string& file : {first, second}) {
    CHECK(workshop.run({"demo", "--claw-rows", "500", "--csv", "--to", file}).exit == 0);
  }
  const std::string table = bytes_of(first);
  CHECK(std::count(table.begin(), table.end(), '\n') == 501);
  CHECK(bytes_of(second) == table);
  CHECK(has(workshop.run({"demo", "--claw-rows", "500", "--to", first}).err, "(output-exists)"));
}

TEST_CASE("What cannot be invented is told before anything is written") {
  const Workshop workshop;
  const std::string folder = workshop.file("invented");
  CHECK(workshop.run({"demo"}).exit == 2);
  CHECK(workshop.run({"demo", "--to", folder, "--herds", "0"}).exit == 2);
  CHECK(workshop.run({"demo", "--to", folder, "--years", "many"}).exit == 2);
  const Ran unknown = workshop.run({"demo", "--to", folder, "--without", "rain"});
  CHECK(unknown.exit == 2);
  CHECK(has(unknown.err, "dd_spreads"));
  CHECK_FALSE(std::filesystem::exists(folder));
}

}  // namespace evenclaw::test
