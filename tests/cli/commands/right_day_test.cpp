// A visit that was begun under the wrong day is put under the right one.
#include <doctest/doctest.h>

#include <string>

#include "tests/cli/program.hpp"

namespace evenclaw::test {
namespace {

/// 412 with a wrap, under 24 October 2026 although it was the 27th.
void begin_under_the_wrong_day(const Workshop& workshop) {
  REQUIRE(workshop
              .run({"start", "Home Farm", "--new-herd", "--feet", "hinds", "--day", "2026-10-24",
                    "--sure"})
              .exit == 0);
  REQUIRE(workshop.run({"record", "-"}, "412 LH DD raw behind; wrap on, off 3d\nrest fine\ndone\n")
              .exit == 0);
}

}  // namespace

TEST_CASE("The open visit is put under its right day, and goes on there") {
  const Workshop workshop;
  begin_under_the_wrong_day(workshop);
  const Ran moved = workshop.run({"right-day", "2026-10-27", "--sure", "--today", "2026-10-27"});
  CHECK(moved.exit == 0);
  CHECK(has(moved.out, "27 Oct"));
  CHECK(has(moved.out, "no longer under Sat 24 Oct"));
  const Ran more = workshop.run({"record", "-"}, "413 nothing found\ndone\n");
  CHECK(has(more.out, "saved 413 "));
  const Ran cow = workshop.run({"show", "cow", "412"});
  CHECK(has(cow.out, "27 Oct"));
  CHECK_FALSE(has(cow.out, "24 Oct"));
  REQUIRE(workshop.run({"end"}).exit == 0);
  CHECK(workshop.run({"sheet", "--day", "2026-10-24"}).exit == 1);
}

TEST_CASE("A visit that was ended is named by the day it stands under") {
  const Workshop workshop;
  begin_under_the_wrong_day(workshop);
  REQUIRE(workshop.run({"end"}).exit == 0);
  const Ran moved = workshop.run({"right-day", "2026-10-27", "--day", "2026-10-24", "--sure"});
  CHECK(moved.exit == 0);
  CHECK(workshop.run({"record", "--day", "2026-10-24"}).exit == 1);
}

TEST_CASE("A day is to come or long ago as seen from the day that is taken for today") {
  const Workshop workshop;
  REQUIRE(workshop.run({"start", "Home Farm", "--new-herd", "--today", "2024-10-24"}).exit == 0);
  CHECK(has(workshop.run({"right-day", "2024-10-28", "--today", "2024-10-27"}).err,
            "2024-10-28 lies after today, 2024-10-27"));
  CHECK(workshop.run({"right-day", "2024-10-26", "--today", "2024-10-27"}).exit == 0);
  CHECK(has(
      workshop
          .run({"start", "Hill Farm", "--new-herd", "--day", "2024-10-28", "--today", "2024-10-27"})
          .err,
      "date-in-future"));
}

TEST_CASE("Tasks of a visit that goes on move with it, and are named") {
  const Workshop workshop;
  begin_under_the_wrong_day(workshop);
  const Ran moved = workshop.run({"right-day", "2026-10-26", "--sure", "--today", "2026-10-27"});
  CHECK(has(moved.out,
            "The tasks it made moved with it:\n"
            "  412 wrap off left hind (farmer): Tue 27 Oct -> Thu 29 Oct\n"));
  CHECK(has(workshop.run({"due", "--today", "2026-10-27"}).out, "by Thu 29 Oct"));
}

TEST_CASE("A task of a visit that was ended keeps the day the farmer was told, and can be moved") {
  const Workshop workshop;
  begin_under_the_wrong_day(workshop);
  (void)workshop.run({"end"});
  const Ran before = workshop.run({"due", "--today", "2026-10-27"});
  const Ran moved = workshop.run(
      {"right-day", "2026-10-26", "--day", "2026-10-24", "--sure", "--today", "2026-10-27"});
  CHECK(has(moved.out, "its tasks keep the days the farmer was told"));
  CHECK(has(moved.out, "  412 wrap off left hind (farmer): Tue 27 Oct -> Thu 29 Oct\n"));
  CHECK(has(moved.out, "evenclaw task \"412\" \"wrap off left hind\" --move 2026-10-29"));
  CHECK(workshop.run({"due", "--today", "2026-10-27"}).out == before.out);
  REQUIRE(workshop.run({"task", "412", "wrap off left hind", "--move", "2026-10-29"}).exit == 0);
  CHECK(has(workshop.run({"due", "--today", "2026-10-27"}).out, "by Thu 29 Oct"));
}

TEST_CASE("A right day that cannot be is refused with what to do, and nothing is moved") {
  const Workshop workshop;
  begin_under_the_wrong_day(workshop);
  REQUIRE(workshop.run({"end"}).exit == 0);
  REQUIRE(workshop.run({"start", "Home Farm", "--day", "2026-10-27", "--sure"}).exit == 0);

  const struct {
    const char* why;
    std::vector<std::string> words;
    int exit;
    const char* told;
  } rows[] = {
      {"no date", {"right-day", "Tuesday"}, 2, "year-month-day"},
      {"to come", {"right-day", "2999-01-01"}, 1, "date-in-future"},
      {"taken", {"right-day", "2026-10-24", "--sure"}, 1, "visit-day-taken"},
      {"it already", {"right-day", "2026-10-27", "--sure"}, 1, "already"},
      {"years back", {"right-day", "2016-10-27"}, 1, "--sure"},
      {"no such visit", {"right-day", "2026-10-28", "--day", "2026-10-01"}, 1, "visit-not-found"},
      {"no herd", {"right-day", "2026-10-28", "--herd", "Elsewhere"}, 1, "herd-not-found"}};

  for (const auto& row : rows) {
    CAPTURE(row.why);
    const Ran ran = workshop.run(row.words);
    CHECK(ran.exit == row.exit);
    CHECK(has(ran.err, row.told));
  }
  CHECK(has(workshop.run({"end"}).out, "27 Oct"));
}

}  // namespace evenclaw::test
