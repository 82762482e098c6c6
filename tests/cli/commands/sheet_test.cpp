// Pages and what they say, on paper and on the screen.
#include <doctest/doctest.h>

#include <filesystem>
#include <string>

#include "tests/cli/one_cow.hpp"

using namespace evenclaw;
using namespace evenclaw::test;

TEST_CASE("the sheet is read on the screen without making a file") {
  const OneCowRecorded recorded;
  const Ran shown = recorded.workshop.run({"sheet", "--text"});
  CHECK(shown.exit == 0);
  CHECK(says(shown.out, "Home Farm"));
  CHECK(says(shown.out, "412"));
  CHECK(says(shown.out, "wrap off"));
  CHECK_FALSE(says(shown.out, "<html"));
  CHECK_FALSE(std::filesystem::exists(recorded.workshop.file("evenclaw/sheets")));
}

TEST_CASE("what is due goes onto a page to hang up, without cows that left") {
  const OneCowRecorded recorded;
  const std::string page = recorded.workshop.file("due.html");
  REQUIRE(recorded.workshop.run({"due", "--paper", page}).exit == 0);
  CHECK(says(bytes_of(page), "<html"));
  CHECK(says(bytes_of(page), "wrap off"));
  REQUIRE(recorded.workshop.run({"told", "412 gone"}).exit == 0);
  const Ran again = recorded.workshop.run({"due", "--paper", page});
  CHECK(again.exit == 0);
  CHECK(says(again.out, page));
  CHECK(says(bytes_of(page), "Nothing is due."));
}
