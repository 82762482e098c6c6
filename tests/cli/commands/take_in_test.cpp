// Joining devices: two that began apart, and two copies that began a herd apart.
#include <doctest/doctest.h>

#include <string>

#include "tests/cli/one_cow.hpp"

using namespace evenclaw;
using namespace evenclaw::test;

namespace {

/// The log of a device, as a file another one can take in.
std::string log_of(const Workshop& workshop) {
  const std::string log = workshop.file("log.jsonl");
  REQUIRE(workshop.run({"log", "--out", log}).exit == 0);
  return log;
}

}  // namespace

TEST_CASE("a device that began on its own is told to begin with a copy, and which herd is meant") {
  const OneCowRecorded here;
  const OneCowRecorded there;
  const Ran ran = here.workshop.run({"take-in", log_of(there.workshop)});
  CHECK(ran.exit == 1);
  CHECK(has(ran.out, "0 new, 0 there already"));
  CHECK(has(ran.out, "cannot be joined, although both have a herd called Home Farm."));
  CHECK(has(ran.out, "evenclaw backup copy.db"));
  CHECK(has(ran.out, "evenclaw restore copy.db --file new.db"));
  const std::string line = "another business";
  CHECK(ran.out.find(line) == ran.out.rfind(line));
}

TEST_CASE("a device that began with a copy is joined without a word about its beginning") {
  const OneCowRecorded here;
  const Workshop there;
  const std::string copy = there.file("copy.db");
  REQUIRE(here.workshop.run({"backup", copy}).exit == 0);
  REQUIRE(there.run({"restore", copy}).exit == 0);
  REQUIRE(there.run({"record", "-"}, "413 nothing found\ndone\n").exit == 0);
  const Ran ran = here.workshop.run({"take-in", log_of(there)});
  CHECK(ran.exit == 0);
  CHECK(has(ran.out, "0 set aside\n"));
  CHECK_FALSE(has(ran.out, "apart"));
}

TEST_CASE("two copies that began a herd of one name apart are told that these stay two herds") {
  const OneCowRecorded here;
  const Workshop there;
  const std::string copy = there.file("copy.db");
  REQUIRE(here.workshop.run({"backup", copy}).exit == 0);
  REQUIRE(there.run({"restore", copy}).exit == 0);
  for (const Workshop* workshop : {&here.workshop, &there}) {
    REQUIRE(workshop->run({"start", "Hill Farm", "--new-herd"}).exit == 0);
  }
  const Ran ran = here.workshop.run({"take-in", log_of(there)});
  CHECK(ran.exit == 0);
  CHECK(has(ran.out, "began a herd called Hill Farm apart: these stay two herds."));
}
