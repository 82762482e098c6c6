// The language in which days are called, as a business settles it.
#include <doctest/doctest.h>

#include "tests/cli/program.hpp"

namespace evenclaw::test {
TEST_CASE("A business that settles German calls its days in German") {
  const Workshop workshop;
  REQUIRE(workshop.run({"start", "Home Farm", "--new-herd", "--feet", "all"}).exit == 0);
  CHECK(workshop.run({"language"}).out == "en  English  (days are called in it)\nde  Deutsch\n");
  CHECK(workshop.run({"language", "de"}).exit == 0);
  CHECK(workshop.run({"language"}).out == "en  English\nde  Deutsch  (days are called in it)\n");
  const auto called = workshop.run({"record", "-"},
                                   "412 lahm HL\nHL außen Sohlengeschwür "
                                   "Sohlenmitte; Klotz drauf innen; Schmerzmittel "
                                   "gegeben\nRest in Ordnung\nfertig\n");
  CHECK(called.exit == 0);
  CHECK(has(called.out, "saved 412"));
  CHECK(has(workshop.run({"show", "cow", "412"}).out, "sole ulcer"));
}

TEST_CASE("A language nobody has words of is refused") {
  const Workshop workshop;
  REQUIRE(workshop.run({"start", "Home Farm", "--new-herd", "--feet", "all"}).exit == 0);
  CHECK(workshop.run({"language", "xx"}).exit == 2);
}

}  // namespace evenclaw::test
