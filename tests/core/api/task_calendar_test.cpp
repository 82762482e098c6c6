#include "core/api/task_calendar.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>

#include "core/api/settle.hpp"
#include "core/base/text.hpp"
#include "core/trade/lesion.hpp"
#include "tests/core/api/workplace.hpp"

namespace evenclaw::test {

namespace {

bool has(const std::string& text, std::string_view part) {
  return text.find(part) != std::string::npos;
}

std::set<std::string> lines_that_begin(const std::string& file, std::string_view with) {
  std::set<std::string> lines;
  for (std::size_t at = 0; at < file.size();) {
    const std::size_t end = file.find("\r\n", at);
    const std::string line = file.substr(at, end - at);
    if (line.rfind(with, 0) == 0) lines.insert(line);
    at = end + 2;
  }
  return lines;
}

TaskCalendar calendar_of(Workplace& place, const Herd& herd, std::string_view today = "2026-10-27",
                         std::optional<Owner> owner = std::nullopt) {
  return task_calendar(place.ports(), herd, owner, day(today)).value();
}

void record_ulcer(Workplace& place) {
  (void)place.visited(
      "2026-10-13",
      {"412 LH outside sole ulcer, bad; block on inside; wrap on, off 3d", "rest fine", "done"});
}

}  // namespace

TEST_CASE("the open tasks of a herd stand in its calendar, those of one owner when asked") {
  Workplace place;
  record_ulcer(place);
  const TaskCalendar all = calendar_of(place, place.herd());
  CHECK(all.open >= 2);
  CHECK(all.cancelled == 0);
  CHECK(has(all.file, "SUMMARY:412: wrap off"));
  std::int32_t of_owners = 0;
  for (const Owner owner : {Owner::farmer, Owner::trimmer, Owner::vet}) {
    of_owners += calendar_of(place, place.herd(), "2026-10-27", owner).open;
  }
  CHECK(of_owners == all.open);
}

TEST_CASE(
    "a wrap to come off on a day nobody answered for stands by its last good day, with the doubt") {
  Workplace place;
  (void)place.visited("2026-10-20",
                      {"412 LH DD raw behind; wrap on, off 30d", "rest fine", "done"});
  const std::string file = calendar_of(place, place.herd()).file;
  CHECK(has(file, "DTSTART;VALUE=DATE:20261027"));
  CHECK_FALSE(has(file, "DTSTART;VALUE=DATE:20261119"));
  CHECK(has(file, "Thu 19 Nov was said"));
}

TEST_CASE("a task that is done comes as cancelled under its UID, with a higher sequence") {
  Workplace place;
  record_ulcer(place);
  const TaskCalendar before = calendar_of(place, place.herd());
  (void)place.visited("2026-10-20", {"412 wrap off"});
  const TaskCalendar after = calendar_of(place, place.herd());
  CHECK(after.open < before.open);
  CHECK(after.cancelled >= 1);
  CHECK(has(after.file, "STATUS:CANCELLED"));
  const auto was = lines_that_begin(before.file, "UID:");
  const auto is = lines_that_begin(after.file, "UID:");
  CHECK(std::includes(is.begin(), is.end(), was.begin(), was.end()));
  const auto number = [](const TaskCalendar& calendar) {
    return std::stol(lines_that_begin(calendar.file, "SEQUENCE:").begin()->substr(9));
  };
  CHECK(number(after) > number(before));
}

TEST_CASE("half a year after it was due a closed task is told no more") {
  Workplace place;
  record_ulcer(place);
  (void)place.visited("2026-10-20", {"412 wrap off"});
  CHECK(calendar_of(place, place.herd(), "2027-10-27").cancelled == 0);
}

TEST_CASE("tasks of a cow who left are cancelled") {
  Workplace place;
  record_ulcer(place);
  (void)place.visited("2026-10-20", {"412 gone"});
  CHECK(calendar_of(place, place.herd()).open == 0);
}

TEST_CASE("a herd's calendar names no other herd, no lesion and no medicine") {
  Workplace place;
  record_ulcer(place);
  const Herd other = place.herd("Far Away Farm");
  (void)place.visited("2026-10-14", {"413 RH DD M2 behind; spray with bluemix; vet", "done"});
  const std::string file = fold_case(calendar_of(place, place.herd()).file);
  CHECK_FALSE(has(file, fold_case(other.name)));
  CHECK_FALSE(has(file, "bluemix"));
  for (const LesionFacts& facts : all_lesions()) {
    if (facts.lesion == Lesion::unclear || facts.lesion == Lesion::other) continue;
    CAPTURE(facts.name);
    CHECK_FALSE(has(file, fold_case(facts.name)));
  }
  CHECK(calendar_of(place, other).open == 0);
}

}  // namespace evenclaw::test
