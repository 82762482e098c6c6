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

TEST_CASE("An invented business is whole, and comes back from its log with the same rows") {
  const Workshop workshop;
  const std::string invented = workshop.file("invented");
  const Ran made = workshop.run({"demo", "--to", invented, "--herds", "1", "--years", "1", "--seed",
                                 "8", "--until", "2026-11-24"});
  REQUIRE(made.exit == 0);
  const std::string records = invented + "/demo.db";
  CHECK(workshop.run({"check", "--file", records}).exit == 0);
  const std::string out = workshop.file("out");
  REQUIRE(workshop.run({"export", "--to", out, "--file", records}).exit == 0);
  const std::string turns = bytes_of(out + "/tables/turn.csv");
  const auto lines = std::count(turns.begin(), turns.end(), '\n');
  CHECK(lines > 1);
  CHECK(has(made.out, "\n" + std::to_string(lines - 1) + " turns from "));

  const std::string anew = workshop.file("anew.db");
  REQUIRE(workshop.run({"take-in", out + "/log.jsonl", "--file", anew}).exit == 0);
  const std::string out_anew = workshop.file("out_anew");
  REQUIRE(workshop.run({"export", "--to", out_anew, "--file", anew}).exit == 0);
  for (const auto& table : std::filesystem::directory_iterator(out + "/tables")) {
    const std::string name = table.path().filename().string();
    if (name == "person.csv") continue;  // names are no part of the log
    CAPTURE(name);
    CHECK(bytes_of(out_anew + "/tables/" + name) == bytes_of(table.path().string()));
  }
}

}  // namespace evenclaw::test
