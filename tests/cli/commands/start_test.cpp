// Starting a visit: a wrong day, a name misspelt, the same herd twice a day.
#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "tests/cli/program.hpp"

namespace evenclaw::test {
TEST_CASE("A visit on a day to come is refused, and no visit is open afterwards") {
  const Workshop workshop;
  const Ran ran = workshop.run({"start", "Home Farm", "--new-herd", "--day", "2999-01-01"});
  CHECK(ran.exit == 1);
  CHECK(has(ran.err, "date-in-future"));
  CHECK(has(ran.err, "2999"));
  CHECK_FALSE(has(workshop.run({"herds"}).out, "not ended"));
}

TEST_CASE("A day that is none is refused with the way to write it") {
  const Workshop workshop;
  for (const char* day : {"Monday", "24.11.2026", "2026-02-30", "2026-13-01"}) {
    CAPTURE(day);
    const Ran ran = workshop.run({"start", "Home Farm", "--new-herd", "--day", day});
    CHECK(ran.exit == 2);
    CHECK(has(ran.err, day));
    CHECK(has(ran.err, "year-month-day"));
  }
}

TEST_CASE("A day years back is asked about as a slip of the year, and taken when it is sure") {
  const Workshop workshop;
  const std::vector<std::string> words = {"start", "Home Farm", "--new-herd", "--day",
                                          "2016-11-24"};
  const Ran asked = workshop.run(words);
  CHECK(asked.exit == 1);
  CHECK(has(asked.err, "2016-11-24"));
  CHECK(has(asked.err, "Check the year"));
  CHECK(has(asked.err, "--sure"));
  CHECK_FALSE(has(workshop.run({"herds"}).out, "not ended"));
  std::vector<std::string> sure = words;
  sure.emplace_back("--sure");
  CHECK(workshop.run(sure).exit == 0);
  CHECK(workshop.run({"start", "Home Farm", "--day", "2016-11-24"}).exit == 0);  // it goes on
}

TEST_CASE("A name that holds control characters is refused, and no herd is made of it") {
  const Workshop workshop;
  for (const char* name : {"Home\nFarm", "\x1B[2JHome Farm", "Home\x7F"}) {
    CAPTURE(name);
    const Ran herd = workshop.run({"start", name, "--new-herd"});
    CHECK(herd.exit == 2);
    CHECK(has(herd.err, "cannot be shown"));
    const Ran caller = workshop.run({"start", "Home Farm", "--new-herd", "--caller", name});
    CHECK(caller.exit == 2);
    CHECK(has(caller.err, "cannot be shown"));
  }
  CHECK_FALSE(has(workshop.run({"herds"}).out, "not ended"));
}

TEST_CASE("A herd nobody knows is told with the nearest one and the way to enter a new one") {
  const Workshop workshop;
  REQUIRE(workshop.run({"start", "Home Farm", "--new-herd"}).exit == 0);
  const Ran ran = workshop.run({"start", "Hone Farm"});
  CHECK(ran.exit == 1);
  CHECK(has(ran.err, "Hone Farm"));
  CHECK(has(ran.err, "Did you mean Home Farm?"));
  CHECK(has(ran.err, "--new-herd"));
}

TEST_CASE("A new herd whose visit was refused is started with the same words put right") {
  const Workshop workshop;
  const std::vector<std::string> words = {"start", "Home Farm", "--new-herd", "--sure", "--day"};
  std::vector<std::string> wrong = words;
  wrong.emplace_back("2999-01-01");
  std::vector<std::string> right = words;
  right.emplace_back("2026-10-06");
  CHECK(workshop.run(wrong).exit == 1);
  CHECK(workshop.run(right).exit == 0);
  REQUIRE(workshop.run({"end"}).exit == 0);
  const Ran again = workshop.run(right);
  CHECK(again.exit == 2);
  CHECK(has(again.err, "Leave out --new-herd."));
}

TEST_CASE("The first herd of all needs to be said to be new") {
  const Workshop workshop;
  const Ran ran = workshop.run({"start", "Home Farm"});
  CHECK(ran.exit == 1);
  CHECK(has(ran.err, "--new-herd"));
}

TEST_CASE("A new herd one letter off a known one is asked about, and entered when it is sure") {
  const Workshop workshop;
  REQUIRE(workshop.run({"start", "Home Farm", "--new-herd"}).exit == 0);
  REQUIRE(workshop.run({"end"}).exit == 0);
  const Ran asked = workshop.run({"start", "Dome Farm", "--new-herd"});
  CHECK(asked.exit == 1);
  CHECK(has(asked.err, "Home Farm"));
  CHECK(has(asked.err, "--sure"));
  CHECK(workshop.run({"start", "Dome Farm", "--new-herd", "--sure"}).exit == 0);
}

TEST_CASE("Started again on the same day the visit goes on") {
  const Workshop workshop;
  REQUIRE(workshop.run({"start", "Home Farm", "--new-herd", "--feet", "all"}).exit == 0);
  const Ran again = workshop.run({"start", "Home Farm"});
  CHECK(again.exit == 0);
  CHECK(has(again.out, "Going on"));
  CHECK(has(again.out, "all four"));
}

TEST_CASE("Other feet or people given with a visit that goes on are not passed over in silence") {
  const Workshop workshop;
  REQUIRE(workshop.run({"start", "Home Farm", "--new-herd", "--feet", "all", "--caller", "Anna"})
              .exit == 0);
  const Ran again = workshop.run(
      {"start", "Home Farm", "--feet", "hinds", "--caller", "Dora", "--writer", "Ben"});
  CHECK(again.exit == 0);
  CHECK(has(again.out, "today both hinds"));
  CHECK(has(again.out, "caller Dora"));
  CHECK(has(again.out, "writer Ben"));
}

TEST_CASE("A visit that was ended is gone on with by naming its day, and that is told") {
  const Workshop workshop;
  REQUIRE(
      workshop.run({"start", "Home Farm", "--new-herd", "--day", "2026-10-06", "--sure"}).exit ==
      0);
  REQUIRE(workshop.run({"end"}).exit == 0);
  const Ran again = workshop.run({"start", "Home Farm", "--day", "2026-10-06"});
  CHECK(again.exit == 0);
  CHECK(has(again.out, "had been ended"));
  CHECK(has(again.out, "--day 2026-10-06"));
  CHECK(has(again.out, "--second"));
  const Ran added =
      workshop.run({"record", "-", "--day", "2026-10-06"}, "412 nothing found\ndone\n");
  CHECK(added.exit == 1);  // today's feet were never said
  CHECK(has(added.out, "saved 412 "));
}

TEST_CASE("A visit of another day that was never ended stands in the way and is named") {
  const Workshop workshop;
  REQUIRE(
      workshop.run({"start", "Home Farm", "--new-herd", "--day", "2026-10-06", "--sure"}).exit ==
      0);
  const Ran next = workshop.run({"start", "Home Farm", "--day", "2026-10-20"});
  CHECK(next.exit == 1);
  CHECK(has(next.err, "2026-10-06"));
  CHECK(has(next.err, "evenclaw end"));
}

TEST_CASE("A caller whose name is one letter off a known one is asked about first") {
  const Workshop workshop;
  REQUIRE(workshop.run({"start", "Home Farm", "--new-herd", "--caller", "Anneke"}).exit == 0);
  REQUIRE(workshop.run({"end"}).exit == 0);
  const Ran asked = workshop.run({"start", "Hill Farm", "--new-herd", "--caller", "Anneka"});
  CHECK(asked.exit == 1);
  CHECK(has(asked.err, "Anneke"));
  CHECK(has(asked.err, "--sure"));
}

TEST_CASE("Feet that are none are refused with the ways to say them") {
  const Workshop workshop;
  const Ran ran = workshop.run({"start", "Home Farm", "--new-herd", "--feet", "LX"});
  CHECK(ran.exit == 2);
  CHECK(has(ran.err, "\"LX\""));
  CHECK(has(ran.err, "hinds"));
}

}  // namespace evenclaw::test
