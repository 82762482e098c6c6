#include "core/api/recording/visit_book.hpp"

#include <doctest/doctest.h>

#include <variant>

#include "tests/core/api/workplace.hpp"

namespace evenclaw::test {

TEST_CASE("the book of a visit that was never started is not opened") {
  Workplace place;
  Visit visit = place.start();
  visit.visit = {};
  const auto book = VisitBook::open(place.ports(), visit, english());
  REQUIRE_FALSE(book.ok());
  CHECK(book.faults().front().slug == "visit-not-found");
}

TEST_CASE("the book has the feet of the day as they were put right since the visit was looked up") {
  Workplace place;
  const Visit visit = place.start("2026-10-27", {});
  (void)place.record(visit).say("today hinds").value();
  const auto book = VisitBook::open(place.ports(), visit, english());
  REQUIRE(book.ok());
  CHECK(book->visit.todays_feet.count() == 2);
}

TEST_CASE(
    "a cow is known by what was recorded of her before, and not by the turn that is corrected") {
  Workplace place;
  (void)place.visited("2026-09-01", {"412 LH SU outside heel bad", "rest fine"});
  const Visit visit = place.start();
  Recording recording = place.record(visit);
  (void)recording.say_all(std::vector<std::string>{"412 RH DD raw behind", "rest fine", "done"});
  (void)recording.end_of_input().value();
  const auto book = VisitBook::open(place.ports(), visit, english());
  REQUIRE(book.ok());
  const auto cow = book->finder.carrier("412");
  REQUIRE(cow);
  const RecordedTurn* turn = book->before.last_of(*cow);
  REQUIRE(turn != nullptr);
  const auto with_it = past_of(*book, *cow);
  REQUIRE(with_it.ok());
  CHECK(with_it->same_visit.size() == 1);
  CHECK(with_it->rows.turns.size() == 2);
  const auto without = past_of(*book, *cow, turn);
  REQUIRE(without.ok());
  CHECK(without->same_visit.empty());
  CHECK(without->rows.turns.size() == 1);
}

}  // namespace evenclaw::test
