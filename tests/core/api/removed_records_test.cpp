#include "core/api/removed_records.hpp"

#include <doctest/doctest.h>

#include "core/api/identities.hpp"
#include "core/api/redaction.hpp"
#include "core/api/sheet.hpp"
#include "core/api/show.hpp"
#include "tests/core/api/workplace.hpp"

namespace evenclaw::test {

namespace {

EntryId turn_of(Workplace& place, const std::string& called) {
  const auto turns = select_as<TurnRow>(place.store, place.herd().herd).value();
  for (const TurnRow& turn : turns) {
    if (turn.called == called) return turn.turn;
  }
  FAIL("nobody was called " << called);
  return {};
}

void take_away(Workplace& place, const std::string& called) {
  (void)redact_entry(place.ports(), turn_of(place, called), "another herd's cow", true).value();
}

std::vector<RemovedRecord> removed_in(Workplace& place, const Visit& visit) {
  return removed_records(place.store, visit.herd, {visit.visit.value}).value();
}

std::string sheet_text(Workplace& place) {
  const Visit visit = find_visit(place.ports(), place.herd().herd, day("2026-10-27")).value();
  return make_sheet(place.ports(), visit, day("2026-10-27"), {"0.1", {}}).value().text;
}

bool says(const std::string& text, std::string_view words) {
  return text.find(words) != std::string::npos;
}

}  // namespace

TEST_CASE("a cow whose record was taken away is named with the day of the visit and the reason") {
  Workplace place;
  (void)place.visited("2026-10-20", {"413 nothing found", "done"});
  (void)place.visited("2026-10-27", {"412 nothing found", "413 nothing found", "done"});
  const Visit visit = find_visit(place.ports(), place.herd().herd, day("2026-10-27")).value();
  CHECK(removed_in(place, visit).empty());
  take_away(place, "412");
  const auto removed = removed_in(place, visit);
  REQUIRE(removed.size() == 1);
  CHECK(removed[0].cow_said == "412");
  CHECK(removed[0].day == day("2026-10-27"));
  CHECK(removed[0].removed_on == day("2026-10-27"));
  CHECK(removed[0].why == "another herd's cow");
  const Visit before = find_visit(place.ports(), place.herd().herd, day("2026-10-20")).value();
  CHECK(removed_in(place, before).empty());
}

TEST_CASE("the sheet says that a cow was there whose record was taken away") {
  Workplace place;
  (void)place.visited("2026-10-27", {"412 nothing found", "413 nothing found", "done"});
  take_away(place, "412");
  CHECK(says(sheet_text(place), "412 was there; a record of her was removed on Tue 27 Oct."));
}

TEST_CASE("a cow without a number whose record was taken away is told of without a name") {
  Workplace place;
  (void)place.visited("2026-10-27", {"no number, brown heifer", "LH bruise", "done"});
  take_away(place, "brown heifer");
  const Visit visit = find_visit(place.ports(), place.herd().herd, day("2026-10-27")).value();
  CHECK(removed_in(place, visit).at(0).cow_said.empty());
  CHECK(says(sheet_text(place), "A cow was there; a record of her was removed"));
  CHECK(says(sheet_text(place), "What was called at this visit was removed."));
}

TEST_CASE("a cow tells of a record of hers that was taken away beside those she still has") {
  Workplace place;
  (void)place.visited("2026-10-20", {"412 nothing found", "done"});
  (void)place.visited("2026-10-27", {"412 lame LH", "LH bruise", "done"});
  const auto turns = select_as<TurnRow>(place.store, place.herd().herd, {}, {"day"}).value();
  (void)redact_entry(place.ports(), turns.back().turn, "wrong cow", true).value();
  const CowShown shown = show_cow(place.store, place.herd().herd, "412", day("2026-10-27")).value();
  REQUIRE(shown.removed.size() == 1);
  CHECK(shown.removed[0].day == day("2026-10-27"));
  REQUIRE(shown.turns.size() == 1);
  CHECK(shown.turns[0].day == day("2026-10-20"));
}

TEST_CASE("a cow of two records that are one tells of both that were taken away") {
  Workplace place;
  (void)place.visited("2026-10-20", {"412 nothing found", "done"});
  (void)place.visited("2026-10-27", {"421 nothing found", "done"});
  const HerdId herd = place.herd().herd;
  take_away(place, "412");
  take_away(place, "421");
  const auto cow = [&](std::string_view said) {
    return find_cow(place.store, herd, said, day("2026-10-27")).value();
  };
  (void)unite_cows(place.ports(), herd, cow("412"), cow("421"), true).value();
  CHECK(show_cow(place.store, herd, "412", day("2026-10-27")).value().removed.size() == 2);
}

TEST_CASE("a count that was taken away leaves its day and the reason at the visit") {
  Workplace place;
  (void)place.visited("2026-10-27", {"12 heifers, far yard, all good", "413 nothing found"});
  const Visit visit = find_visit(place.ports(), place.herd().herd, day("2026-10-27")).value();
  CHECK(show_visit(place.ports(), visit).value().removed_counts.empty());
  const auto rows = select_as<BatchRow>(place.store, visit.herd).value();
  REQUIRE(rows.size() == 1);
  (void)redact_entry(place.ports(), rows.front().batch, "another herd's heifers", true).value();
  const VisitShown shown = show_visit(place.ports(), visit).value();
  REQUIRE(shown.removed_counts.size() == 1);
  CHECK(shown.removed_counts.front().why == "another herd's heifers");
  CHECK(shown.removed_counts.front().day == day("2026-10-27"));
  CHECK(shown.removed.empty());
  CHECK(shown.batches.empty());
}

}  // namespace evenclaw::test
