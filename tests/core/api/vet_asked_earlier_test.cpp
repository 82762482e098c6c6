#include "core/api/vet_asked_earlier.hpp"

#include <doctest/doctest.h>

#include <string>

#include "core/api/sheet.hpp"
#include "tests/core/api/workplace.hpp"
#include "tests/core/sheets/sheet_text.hpp"

namespace evenclaw::test {

namespace {

/// The sheet of Friday 6 November, after a visit on Monday 2 November.
std::string sheet_after(const std::vector<std::string>& before,
                        const std::vector<std::string>& now) {
  Workplace place;
  place.clock.set(day("2026-11-02"));
  (void)place.visited("2026-11-02", before);
  place.clock.set(day("2026-11-06"));
  const Visit visit = place.visited("2026-11-06", now).visit;
  return make_sheet(place.ports(), visit, day("2026-11-06"), {"0.1", {}}).value().text;
}

}  // namespace

TEST_CASE("the vet asked for at an earlier visit is told with what was there then") {
  const std::string sheet =
      sheet_after({"522 lame LH", "LH TU outside, bad; vet", "rest fine", "done"},
                  {"12 nothing found", "done"});
  CHECK_MESSAGE(holds(sheet, "Left hind, the vet was asked for on Mon 2 Nov for outside claw: toe"),
                sheet);
  CHECK_MESSAGE(holds(sheet, "nobody said since"), sheet);
}

TEST_CASE("what was found at this visit stands before what the vet was asked for") {
  const std::string sheet =
      sheet_after({"522 lame LH", "LH TU outside, bad; vet", "rest fine", "done"},
                  {"522 LH SU inside", "rest fine", "done"});
  CHECK_MESSAGE(holds(sheet, "Left hind, inside claw: sole ulcer (SU); the vet was asked"), sheet);
}

}  // namespace evenclaw::test
