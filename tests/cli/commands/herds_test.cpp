// The herds and how each stands.
#include <doctest/doctest.h>

#include "tests/cli/program.hpp"

namespace evenclaw::test {

TEST_CASE("Each herd tells its cows, its visit that was not ended and what is late there") {
  const Workshop workshop;
  const std::vector<std::string> today = {"--today", "2026-11-25"};
  const auto on = [&](std::vector<std::string> words, const std::string& input = "") {
    words.insert(words.end(), today.begin(), today.end());
    return workshop.run(words, input);
  };
  REQUIRE(on({"start", "Home Farm", "--new-herd", "--feet", "all"}).exit == 0);
  REQUIRE(on({"record", "-"}, "412 LH DD raw behind; spray; wrap on, off Fri\nrest fine\ndone\n")
              .exit == 0);
  CHECK(on({"herds"}).out ==
        "Home Farm: 1 cow, last visit Wed 25 Nov, visit of Wed 25 Nov not ended; 0 late, 1 to do "
        "now, 1 coming\n");
  const Ran later = workshop.run({"herds", "--today", "2026-12-24"});
  CHECK(later.out.find("2 late, 0 to do now, 0 coming") != std::string::npos);
}

TEST_CASE("Where no herd was ever visited it is said how the first one is entered") {
  const Workshop workshop;
  REQUIRE(workshop.run({"start", "Home Farm", "--new-herd"}).exit == 0);
  CHECK(workshop.run({"herds"}).out.find("Home Farm: 0 cows") == 0);
}

}  // namespace evenclaw::test
