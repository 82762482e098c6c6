#include "core/api/visits.hpp"

#include <doctest/doctest.h>

#include "core/log/body.hpp"
#include "tests/core/api/workplace.hpp"

namespace evenclaw::test {

namespace {

VisitWanted wanted(Workplace& place, std::string_view on) {
  VisitWanted visit;
  visit.herd = place.herd().herd;
  visit.day = day(on);
  visit.todays_feet = four_feet;
  return visit;
}

std::string slug_of(const Result<Visit>& visit) {
  return visit ? "" : visit.faults().front().slug;
}

std::string slug_of(const Result<DayCorrected>& corrected) {
  return corrected ? "" : corrected.faults().front().slug;
}

std::int64_t closings(Workplace& place) {
  std::int64_t count = 0;
  (void)place.store.read_entries(
      {place.herd().herd.value, std::nullopt, {std::string(VisitClosed::kind)}},
      [&](const Entry&) { return ++count > 0; });
  return count;
}

}  // namespace

TEST_CASE("a visit that is started again the same day goes on, ended or not") {
  Workplace place;
  const Visit first = start_visit(place.ports(), wanted(place, "2026-10-27")).value();
  CHECK_FALSE(first.goes_on);
  const Visit again = start_visit(place.ports(), wanted(place, "2026-10-27")).value();
  CHECK(again.goes_on);
  CHECK(again.visit == first.visit);
  (void)end_visit(place.ports(), first, english()).value();
  const Visit after = start_visit(place.ports(), wanted(place, "2026-10-27")).value();
  CHECK(after.visit == first.visit);
  CHECK(after.closed);
}

TEST_CASE("a second visit of a day is one of its own once the first was ended") {
  Workplace place;
  VisitWanted second = wanted(place, "2026-10-27");
  second.second_that_day = true;
  const Visit first = start_visit(place.ports(), wanted(place, "2026-10-27")).value();
  CHECK(start_visit(place.ports(), second).value().visit == first.visit);
  (void)end_visit(place.ports(), first, english()).value();
  const Visit own = start_visit(place.ports(), second).value();
  CHECK(own.visit != first.visit);
  CHECK(own.ordinal == 2);
  CHECK(find_visit(place.ports(), own.herd, own.day).value().visit == own.visit);
  CHECK(find_visit(place.ports(), own.herd, own.day, 1).value().visit == first.visit);
}

TEST_CASE("a visit that is refused for the name of who writes enters nobody, nor a herd") {
  Workplace place;
  VisitWanted first = wanted(place, "2026-10-27");
  first.today = day("2026-10-27");
  first.caller = "Mo";
  first.writer = "Jo";
  const std::size_t known = place.ports().directory.everybody().value().size();
  const Outcome checked = check_first_visit(place.ports(), first);
  REQUIRE_FALSE(checked.ok());
  CHECK(checked.faults().front().slug == "answer-needed");
  CHECK(slug_of(start_visit(place.ports(), first)) == "answer-needed");
  CHECK(place.ports().directory.everybody().value().size() == known);
  first.sure = true;
  CHECK(check_first_visit(place.ports(), first).ok());
  CHECK(place.ports().directory.everybody().value().size() == known);
}

TEST_CASE("a herd whose last visit was never ended gets no new one on another day") {
  Workplace place;
  (void)start_visit(place.ports(), wanted(place, "2026-10-26")).value();
  CHECK(slug_of(start_visit(place.ports(), wanted(place, "2026-10-27"))) == "two-visits-open");
}

TEST_CASE("a day to come is refused, and one long ago is asked about") {
  Workplace place;
  CHECK(slug_of(start_visit(place.ports(), wanted(place, "2026-10-28"))) == "date-in-future");
  CHECK(slug_of(start_visit(place.ports(), wanted(place, "2025-10-27"))) == "answer-needed");
  VisitWanted sure = wanted(place, "2025-10-27");
  sure.sure = true;
  CHECK(start_visit(place.ports(), sure));
}

TEST_CASE("the day that is said to be today is what a day is held against, not the clock") {
  Workplace place;
  VisitWanted later = wanted(place, "2026-10-28");
  later.today = day("2026-10-28");
  const Visit visit = start_visit(place.ports(), later).value();
  CHECK(visit.day == day("2026-10-28"));
  const auto moved = [&](std::string_view today) {
    return slug_of(correct_visit_day(place.ports(), visit, {day("2026-10-29"), false, day(today)}));
  };
  CHECK(moved("2026-10-28") == "date-in-future");
  CHECK(moved("2027-10-29") == "answer-needed");
  CHECK(moved("2026-10-29").empty());
}

TEST_CASE("the open visit is the only one, and none and two are told apart") {
  Workplace place;
  CHECK(slug_of(the_open_visit(place.ports(), std::nullopt)) == "no-visit-open");
  const Visit first = place.start("2026-10-27");
  CHECK(the_open_visit(place.ports(), std::nullopt).value().visit == first.visit);
  VisitWanted other = wanted(place, "2026-10-27");
  other.herd = place.herd("Marlholt").herd;
  (void)start_visit(place.ports(), other).value();
  CHECK(slug_of(the_open_visit(place.ports(), std::nullopt)) == "two-visits-open");
  CHECK(the_open_visit(place.ports(), other.herd).value().herd == other.herd);
}

TEST_CASE("a visit that is ended twice is closed once, and once more when something was added") {
  Workplace place;
  const Visit visit = place.visited("2026-10-27", {"412 nothing found", "done"}).visit;
  const VisitEnded again = end_visit(place.ports(), visit, english()).value();
  CHECK(again.ended_before);
  CHECK(closings(place) == 1);
  (void)place.visited("2026-10-27", {"413 nothing found", "done"});
  CHECK(closings(place) == 2);
}

TEST_CASE("a visit is not moved onto another one, nor to where it stands") {
  Workplace place;
  const Visit first = place.visited("2026-10-20", {"412 nothing found", "done"}).visit;
  (void)place.visited("2026-10-27", {"412 nothing found", "done"});
  const auto move = [&](std::string_view to) {
    return slug_of(correct_visit_day(place.ports(), first, {day(to), false}));
  };
  CHECK(move("2026-10-27") == "visit-day-taken");
  CHECK(move("2026-10-20") == "nothing-to-do");
  CHECK(move("2026-10-28") == "date-in-future");
  CHECK(move("2025-10-20") == "answer-needed");
  CHECK(move("2026-10-21").empty());
}

}  // namespace evenclaw::test
