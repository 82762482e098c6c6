// The sheets of whole days, as they were typed: five ordinary ones, the messy ones, the example's.
// Read by a person before they were kept: tests/approved/days.
#include <doctest/doctest.h>

#include <fstream>
#include <string>
#include <vector>

#include "core/api/sheet.hpp"
#include "tests/core/api/workplace.hpp"
#include "tests/core/sheets/approved.hpp"

using namespace evenclaw;
using namespace evenclaw::test;

namespace {

struct SheetOfDay {
  std::string name;                 // of the approved sheet
  std::vector<std::string> visits;  // files of calls; the sheet is that of the last one
};

const std::vector<SheetOfDay> days_with_sheets = {
    {"ordinary-1", {"ordinary/day1-before", "ordinary/day1"}},
    {"ordinary-2", {"ordinary/day2-before", "ordinary/day2"}},
    {"ordinary-3", {"ordinary/day3-before", "ordinary/day3"}},
    {"ordinary-4", {"ordinary/day4-before", "ordinary/day4"}},
    {"ordinary-5", {"ordinary/day5-before", "ordinary/day5"}},
    {"messy-gate", {"messy/gate-2026-10-06", "messy/gate-2026-10-20"}},
    {"messy-rain", {"messy/rain-2026-09-24", "messy/rain-2026-10-22"}},
    {"messy-trainee", {"messy/trainee-2026-09-25", "messy/trainee-2026-10-23"}},
    {"example", {"example/2026-09-29", "example/2026-10-13", "example/2026-10-27"}}};

std::vector<std::string> lines_called(const std::string& file) {
  std::ifstream in("data/" + file + ".calls");
  REQUIRE_MESSAGE(in.good(), file);
  std::vector<std::string> lines;
  for (std::string line; std::getline(in, line);) lines.push_back(line);
  return lines;
}

/// What stands behind "# herd: " and the like; "" when no line says so.
std::string called_in_head(const std::vector<std::string>& lines, const std::string& what) {
  const std::string head = "# " + what + ": ";
  for (const std::string& line : lines) {
    if (line.rfind(head, 0) == 0) return line.substr(head.size());
  }
  return {};
}

std::string day_of(const std::string& file, const std::vector<std::string>& lines) {
  constexpr std::size_t length_of_day = 10;
  const std::string told = called_in_head(lines, "date");
  return told.empty() ? file.substr(file.size() - length_of_day) : told;
}

/// Typed line by line and closed.
Visit typed_and_ended(Workplace& place, const std::string& file) {
  const std::vector<std::string> lines = lines_called(file);
  const Day on = day(day_of(file, lines));
  VisitWanted wanted;
  wanted.herd = place.herd(called_in_head(lines, "herd")).herd;
  wanted.day = on;
  place.clock.set(on);
  const Visit visit = start_visit(place.ports(), wanted).value();
  Recording recording = place.record(visit);
  for (const std::string& line : lines) (void)recording.say(line).value();
  (void)recording.end_of_visit().value();
  (void)end_visit(place.ports(), visit, english()).value();
  return visit;
}

std::string sheet_of_day(const SheetOfDay& told) {
  Workplace place;
  Visit visit;
  for (const std::string& file : told.visits) visit = typed_and_ended(place, file);
  const auto sheet = make_sheet(place.ports(), visit, visit.day, {"0.1.0", {}});
  REQUIRE(sheet.ok());
  return sheet->text;
}

}  // namespace

TEST_CASE("the sheet of a whole day stays as people have read it") {
  for (const SheetOfDay& told : days_with_sheets) {
    CHECK_MESSAGE(difference_to_approved(told.name + ".txt", sheet_of_day(told), "days") == "",
                  told.name);
  }
}
