#include "core/api/stops_before.hpp"

#include <doctest/doctest.h>

#include <string>
#include <utility>
#include <vector>

#include "core/api/sheet.hpp"
#include "tests/core/api/workplace.hpp"
#include "tests/core/sheets/sheet_text.hpp"

namespace evenclaw::test {

namespace {

/// The sheet of Friday 6 November, after a visit on Monday 2 November.
std::string sheet_after(const std::vector<std::string>& monday,
                        const std::vector<std::string>& friday) {
  Workplace place;
  place.clock.set(day("2026-11-02"));
  (void)place.visited("2026-11-02", monday);
  place.clock.set(day("2026-11-06"));
  const Visit visit = place.visited("2026-11-06", friday).visit;
  return make_sheet(place.ports(), visit, day("2026-11-06"), {"0.1", {}}).value().text;
}

}  // namespace

TEST_CASE("a Stop gone past is told again until its foot was lifted again") {
  for (const auto& [line, is_told] :
       {std::pair("12 nothing found", true), std::pair("522 nothing found", false)}) {
    const std::string sheet =
        sheet_after({"522 RH outside swollen", "go ahead", "rest fine", "done"}, {line, "done"});
    CHECK_MESSAGE(holds(sheet, "Stop of Mon 2 Nov, gone ahead anyway") == is_told, sheet);
  }
}

TEST_CASE("blisters that raised no Stop are told again at the next visit") {
  const std::string sheet =
      sheet_after({"501 LF blisters", "rest fine", "done"}, {"12 nothing found", "done"});
  CHECK_MESSAGE(holds(sheet, "501  Left front, seen Mon 2 Nov"), sheet);
}

TEST_CASE("what may be notifiable stays though the vet was asked for, until he came to her") {
  const std::vector<std::string> monday = {"501 sore mouth; fever; vet", "rest fine", "done"};
  const std::pair<const char*, bool> since[] = {{"12 nothing found", true},
                                                {"501 nothing found", true},
                                                {"501 sold", true},
                                                {"501 vet came", false}};
  for (const auto& [line, stays] : since) {
    const std::string sheet = sheet_after(monday, {line, "13 nothing found", "done"});
    CHECK_MESSAGE(holds(sheet, "COULD BE NOTIFIABLE") == stays, sheet);
  }
}

TEST_CASE("that the vet came settles a Stop of a cow for whom nobody asked for him") {
  const std::string sheet = sheet_after({"501 sore mouth; fever", "rest fine", "done"},
                                        {"501 vet came", "12 nothing found", "done"});
  CHECK_MESSAGE(!holds(sheet, "COULD BE NOTIFIABLE"), sheet);
}

TEST_CASE("signs of two visits are named together") {
  const std::string sheet =
      sheet_after({"501 sore mouth; vet", "rest fine", "done"},
                  {"502 fever", "rest fine", "503 LH blisters", "rest fine", "done"});
  CHECK_MESSAGE(holds(sheet, "501 (sore mouth, seen Mon 2 Nov); 502 (fever); 503 (blisters)"),
                sheet);
}

}  // namespace evenclaw::test
