// The visits that ship with the program, as somebody plays them who has just installed it.
#include <doctest/doctest.h>

#include <filesystem>

#include "tests/cli/program.hpp"

namespace evenclaw::test {
TEST_CASE("The example lies in a file of its own, and not among the records of who plays it") {
  const Workshop workshop;
  REQUIRE(workshop.run({"start", "Home Farm", "--new-herd"}).exit == 0);
  const Ran played = workshop.run({"example"});
  CHECK(played.exit == 0);
  CHECK(has(played.out, "evenclaw/example.db"));
  CHECK_FALSE(has(workshop.run({"herds"}).out, "\n" + played.out.substr(0, played.out.find(','))));
  CHECK(workshop.run({"herds"}).out.find("Home Farm") == 0);
}

TEST_CASE("Every line of the example is understood, and its sheet lies where it is said to lie") {
  const Workshop workshop;
  const Ran played = workshop.run({"example", "--each"});
  CHECK(played.exit == 0);
  CHECK(has(played.out, "saved "));
  CHECK_FALSE(has(played.out, "refused"));
  const std::string said = "The farmer's sheet lies at\n  ";
  const std::size_t from = played.out.find(said) + said.size();
  const std::string sheet = played.out.substr(from, played.out.find('\n', from) - from);
  CHECK(std::filesystem::file_size(sheet) > 1000);
}

TEST_CASE("Played once more the example records nothing twice") {
  const Workshop workshop;
  REQUIRE(workshop.run({"example"}).exit == 0);
  const std::string file = workshop.file("evenclaw/example.db");
  const std::string before = workshop.run({"log", "--file", file}).out;
  const Ran again = workshop.run({"example"});
  CHECK(again.exit == 0);
  CHECK(has(again.out, "all recorded before"));
  const std::string after = workshop.run({"log", "--file", file}).out;
  const auto turns = [](const std::string& log) {
    std::size_t count = 0;
    for (std::size_t at = log.find("\"kind\":\"turn\""); at != std::string::npos;
         at = log.find("\"kind\":\"turn\"", at + 1)) {
      ++count;
    }
    return count;
  };
  CHECK(turns(before) > 10);
  CHECK(turns(after) == turns(before));
}

TEST_CASE("What the example says to look at is there") {
  const Workshop workshop;
  const Ran played = workshop.run({"example"});
  CHECK(has(played.out, "evenclaw show cow 231 --file "));
  const Ran shown =
      workshop.run({"show", "cow", "231", "--file", workshop.file("evenclaw/example.db")});
  CHECK(shown.exit == 0);
  CHECK(has(shown.out, "231"));
}

TEST_CASE("In a business that calls its days in German the example is read in its own words") {
  const Workshop workshop;
  const std::string file = workshop.file("german.db");
  REQUIRE(workshop.run({"start", "Lindenhof", "--new-herd", "--file", file}).exit == 0);
  REQUIRE(workshop.run({"language", "de", "--file", file}).exit == 0);
  const Ran played = workshop.run({"example", "--each", "--file", file});
  CHECK(played.exit == 0);
  CHECK(has(played.out, "saved "));
  CHECK_FALSE(has(played.out, "refused"));
}

}  // namespace evenclaw::test
