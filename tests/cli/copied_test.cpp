#include <doctest/doctest.h>

#include <string>

#include "store/sqlite/connection.hpp"
#include "tests/cli/program.hpp"

using namespace evenclaw;
using namespace evenclaw::test;

namespace {

void record_a_turn(const Workshop& workshop) {
  REQUIRE(workshop.run({"start", "Home Farm", "--new-herd", "--feet", "all"}).exit == 0);
  REQUIRE(workshop.run({"record"}, "412 lame LH\nLH DD raw behind; wrap on\ndone\n").exit == 0);
}

void change_words(const std::string& file) {
  Connection(file, Access::write)
      .run("UPDATE entry SET body = replace(body, 'raw', 'Raw') WHERE kind = 'turn'");
}

}  // namespace

TEST_CASE("a backup of records in which one word was changed is not called good") {
  const Workshop workshop;
  record_a_turn(workshop);
  const std::string copy = workshop.file("copy.db");
  REQUIRE(workshop.run({"backup", copy}).exit == 0);

  change_words(workshop.records());
  const std::string damaged = workshop.file("damaged.db");
  const Ran ran = workshop.run({"backup", damaged});
  CHECK(ran.exit == 4);
  CHECK(has(ran.err, "damaged at 1 place"));
  CHECK(has(ran.err, "evenclaw check --file " + damaged));
  CHECK(workshop.run({"check", "--file", copy}).exit == 0);
}

TEST_CASE("a damaged backup is restored as far as it goes, and said to be damaged") {
  const Workshop workshop;
  record_a_turn(workshop);
  const std::string copy = workshop.file("copy.db");
  REQUIRE(workshop.run({"backup", copy}).exit == 0);
  change_words(copy);
  const std::string restored = workshop.file("restored.db");
  const Ran ran = workshop.run({"restore", copy, "--file", restored});
  CHECK(ran.exit == 4);
  CHECK(has(ran.err, "damaged at 1 place"));
  CHECK(workshop.run({"show", "herd", "--file", restored}).exit == 0);
}
