// What a business settles once for all its herds.
#include <doctest/doctest.h>

#include "tests/cli/program.hpp"

namespace evenclaw::test {

TEST_CASE("How long a cow may stand in the crush before it is noted is settled for all herds") {
  const Workshop workshop;
  REQUIRE(workshop.run({"start", "Home Farm", "--new-herd", "--feet", "all"}).exit == 0);
  CHECK(workshop.run({"setting"}).out ==
        "long-in-crush  20  (usually 20 minutes: our judgement, no source)\n"
        "ring  off  (usually off: the sheet leaves a line to write on)\n");
  CHECK(workshop.run({"setting", "long-in-crush", "25"}).exit == 0);
  CHECK(workshop.run({"setting"}).out.find("long-in-crush  25") == 0);
  CHECK(workshop.run({"setting", "long-in-crush", "off"}).exit == 0);
  CHECK(workshop.run({"setting"}).out.find("long-in-crush  off") == 0);
}

TEST_CASE("Whom the farm rings stands on every sheet, and a line to write on until it is settled") {
  const Workshop workshop;
  REQUIRE(workshop.run({"start", "Home Farm", "--new-herd", "--feet", "all"}).exit == 0);
  CHECK(workshop.run({"sheet", "--text"}).out.find("Name and telephone ____") != std::string::npos);
  CHECK(workshop.run({"setting", "ring", "Anna, 01234 567890"}).exit == 0);
  const std::string text = workshop.run({"sheet", "--text"}).out;
  CHECK(text.find("Anna, 01234 567890") != std::string::npos);
  CHECK(text.find("Name and telephone") == std::string::npos);
  CHECK(workshop.run({"person", "list"}).out.find("Anna") == std::string::npos);
  CHECK(workshop.run({"setting", "ring", "off"}).exit == 0);
  CHECK(workshop.run({"setting"}).out.find("ring  off") != std::string::npos);
}

TEST_CASE("A setting nobody knows, and minutes that are none, are refused with what there is") {
  const Workshop workshop;
  REQUIRE(workshop.run({"start", "Home Farm", "--new-herd", "--feet", "all"}).exit == 0);
  const Ran unknown = workshop.run({"setting", "colour", "red"});
  CHECK(unknown.exit == 2);
  CHECK(unknown.err.find("There is: long-in-crush, ring.") != std::string::npos);
  CHECK(workshop.run({"setting", "long-in-crush", "soon"}).exit == 2);
}

}  // namespace evenclaw::test
