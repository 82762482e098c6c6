// The herd's own list of products, as it is kept from the command line.
#include <doctest/doctest.h>

#include "tests/cli/program.hpp"

namespace evenclaw::test {
namespace {

void begin(const Workshop& workshop) {
  REQUIRE(workshop.run({"start", "Home Farm", "--new-herd", "--feet", "all"}).exit == 0);
}

}  // namespace

TEST_CASE("A product is put on the herd's list, read back, and dropped") {
  const Workshop workshop;
  begin(workshop);
  const Ran added =
      workshop.run({"product", "home", "add", "bluemix", "--called", "blue spray", "--labelled",
                    "yes", "--milk", "48h", "--meat", "0", "--stated-by", "label"});
  CHECK(added.exit == 0);
  CHECK(has(added.out,
            "On the list: bluemix, blue spray: milk 48 hours, meat none, says the "
            "label\n"));
  CHECK(has(workshop.run({"product", "home", "list"}).out, "bluemix, blue spray: milk 48 hours"));
  CHECK(workshop.run({"product", "home", "drop", "bluemix"}).exit == 0);
  CHECK(workshop.run({"product", "home", "list"}).out == "No product is on the list yet.\n");
}

TEST_CASE("A product used off label below the least withdrawal is told so at once") {
  const Workshop workshop;
  begin(workshop);
  const Ran added = workshop.run({"product", "home", "add", "strongmix", "--labelled", "no",
                                  "--milk", "2d", "--meat", "28d", "--vet", "Dr Lee"});
  CHECK(added.exit == 0);
  CHECK(has(added.out, "directed by Dr Lee\n  Too short off label: milk 2 days, at least 7 days"));
}

TEST_CASE("A withdrawal without its unit is refused, and nothing is listed") {
  const Workshop workshop;
  begin(workshop);
  const Ran refused = workshop.run({"product", "home", "add", "bluemix", "--milk", "2"});
  CHECK(refused.exit == 2);
  CHECK(has(refused.err, "48h, 4 milkings, 2d, or 0 for none"));
  CHECK(workshop.run({"product", "home", "list"}).out == "No product is on the list yet.\n");
}

TEST_CASE("What is held back stands first in the due list, with its end by milking") {
  const Workshop workshop;
  begin(workshop);
  REQUIRE(workshop
              .run({"product", "home", "add", "slowmix", "--labelled", "yes", "--milk", "2d",
                    "--meat", "5d"})
              .exit == 0);
  REQUIRE(workshop
              .run({"record", "-"},
                   "412 LH DD raw behind; spray with slowmix; wrap on, off tomorrow\n"
                   "rest fine\ndone\n")
              .exit == 0);
  const std::string due = workshop.run({"due"}).out;
  CHECK(due.rfind("Milk and meat held back\n", 0) == 0);
  CHECK(due.find("last milk held back: ") < due.find("last day meat held back: "));
  CHECK(due.find("last day meat held back: ") < due.find("wrap off left hind"));
}

}  // namespace evenclaw::test
