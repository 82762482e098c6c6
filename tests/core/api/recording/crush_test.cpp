#include "core/api/recording/crush.hpp"

#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "core/api/recording/held_back.hpp"
#include "tests/core/api/workplace.hpp"

namespace evenclaw::test {

namespace {

CowSaid numbered(const std::string& number) {
  CowSaid cow;
  cow.number = number;
  return cow;
}

Crush with_cow(const std::string& number) {
  Crush crush;
  crush.cow.emplace();
  crush.cow->draft.turn.cow = numbered(number);
  return crush;
}

}  // namespace

TEST_CASE("a cow who stands there is named once more by her number, zeros in front or not") {
  Workplace place;
  const VisitBook book = VisitBook::open(place.ports(), place.start(), english()).value();
  const Crush crush = with_cow("412");
  CHECK(stands_there(book, crush, numbered("0412")));
  CHECK_FALSE(stands_there(book, crush, numbered("421")));
  CHECK_FALSE(stands_there(book, Crush{}, numbered("412")));
}

TEST_CASE("the same words without a number are the next cow once all was called of the first") {
  Workplace place;
  const VisitBook book = VisitBook::open(place.ports(), place.start(), english()).value();
  Crush crush;
  crush.cow.emplace();
  CowSaid brown;
  brown.known = CowKnown::unnumbered;
  brown.looks = "brown heifer";
  crush.cow->draft.turn.cow = brown;
  CHECK(stands_there(book, crush, brown));
  crush.cow->draft.turn.rest_fine = true;
  CHECK_FALSE(stands_there(book, crush, brown));
}

TEST_CASE("a line that may have named another cow holds back what is said of feet behind it") {
  Workplace place;
  const VisitBook book = VisitBook::open(place.ports(), place.start(), english()).value();
  Crush crush = with_cow("412");
  hold_back_after(book, crush, "next one 413");
  CHECK(crush.held_back_by == "next one 413");
  const auto feet = read_line("LH DD raw behind", {book.visit.day, true, 2}, english());
  REQUIRE(feet.ok());
  CHECK(holds_back(crush, *feet, "LH DD raw behind"));
  const auto named = read_line("413 LH DD raw behind", {book.visit.day, true, 3}, english());
  REQUIRE(named.ok());
  let_go_held_back(book, crush, *named, "413 LH DD raw behind");
  CHECK(crush.held_back_by.empty());
}

TEST_CASE("nothing is held back while nobody stands there") {
  Workplace place;
  const VisitBook book = VisitBook::open(place.ports(), place.start(), english()).value();
  Crush crush;
  hold_back_after(book, crush, "next one 413");
  CHECK(crush.held_back_by.empty());
}

TEST_CASE("who was only spoken of leaves neither questions nor anything held back") {
  Workplace place;
  VisitBook book = VisitBook::open(place.ports(), place.start(), english()).value();
  Crush crush = with_cow("412");
  crush.held_back_by = "next one 413";
  book.answers.add(ReplyKind::question, "Which number has she?").cow = "412";
  take_out(book, crush);
  CHECK_FALSE(crush.cow);
  CHECK(crush.held_back_by.empty());
  CHECK(book.answers.count() == 0);
}

}  // namespace evenclaw::test
