// The sheet of a visit, made again when a later visit is long in the log.
#include <doctest/doctest.h>

#include <string>

#include "core/api/sheet.hpp"
#include "tests/core/api/workplace.hpp"
#include "tests/core/sheets/sheet_text.hpp"

namespace evenclaw::test {

namespace {

/// Two visits four weeks apart: 112 and 87 come at both, 501 and 98 are treated at the later one.
struct TwoVisits {
  TwoVisits() {
    place.clock.set(day("2026-11-24"));
    earlier = place
                  .visited("2026-10-27", {"112 LH DD raw; wrap 3 days; rest fine",
                                          "87 RH outside SU, bad; block inside; see again 28d",
                                          "rest fine", "63 nothing found", "done"})
                  .visit;
    later =
        place
            .visited("2026-11-24",
                     {"112 wrap off, 63 sold", "87 RH outside SU, slight; block off; rest fine",
                      "501 RH foul; vet; see again 5d; rest fine",
                      "98 LH block outside, off in 3 weeks; milk withheld 4d; rest fine", "done"})
            .visit;
  }

  std::string sheet(const Visit& visit, const char* today) {
    return make_sheet(place.ports(), visit, day(today), {"0.1", {}}).value().text;
  }

  Workplace place;
  Visit earlier;
  Visit later;
};

}  // namespace

TEST_CASE("the sheet of an older visit tells what that visit said and nothing that came later") {
  TwoVisits visits;
  const std::string sheet = visits.sheet(visits.earlier, "2026-11-24");
  CHECK_FALSE(holds(sheet, "501"));
  CHECK_FALSE(holds(sheet, "98 "));
  CHECK_FALSE(holds(sheet, "MILK"));
  CHECK_FALSE(holds(sheet, "sole ulcer, slight"));
  CHECK(holds(sheet, "block on, right hind"));
  CHECK(holds(sheet, "sole ulcer, bad"));
}

TEST_CASE("what became of the tasks of an older visit is told as known since, with its day") {
  TwoVisits visits;
  const std::string sheet = visits.sheet(visits.earlier, "2026-11-24");
  const std::size_t since = sheet.find("Settled since this visit");
  REQUIRE(since != std::string::npos);
  CHECK(sheet.find("112 wrap off left hind, by Fri 30 Oct", since) != std::string::npos);
  CHECK(holds(sheet, "Settled Tue 24 Nov: "));
  CHECK_FALSE(holds(sheet, "[ ] wrap off left hind"));
}

TEST_CASE("a sheet made on a later day says at its head when, and of which visit it tells") {
  TwoVisits visits;
  CHECK(holds(visits.sheet(visits.earlier, "2026-11-24"),
              "Sheet made: Tue 24 Nov; it tells of that visit"));
  CHECK_FALSE(holds(visits.sheet(visits.later, "2026-11-24"), "it tells of that visit"));
}

TEST_CASE("as of its own day an older visit has its tasks open again") {
  TwoVisits visits;
  const std::string sheet = visits.sheet(visits.earlier, "2026-10-27");
  CHECK(holds(sheet, "[ ] wrap off left hind"));
  CHECK_FALSE(holds(sheet, "Settled since"));
  CHECK_FALSE(holds(sheet, "501"));
}

TEST_CASE("how often a case was found is counted up to the visit the sheet is of") {
  Workplace place;
  place.clock.set(day("2026-11-24"));
  (void)place.visited("2026-09-29", {"54 LH DD chronic; rest fine", "done"});
  const Visit second = place.visited("2026-10-27", {"54 LH DD raw; rest fine", "done"}).visit;
  (void)place.visited("2026-11-24", {"54 LH DD chronic; rest fine", "done"});
  const std::string sheet =
      make_sheet(place.ports(), second, day("2026-11-24"), {"0.1", {}}).value().text;
  CHECK(holds(sheet, "since Tue 29 Sep; at 2 visits"));
  CHECK_FALSE(holds(sheet, "at 3 visits"));
}

}  // namespace evenclaw::test
