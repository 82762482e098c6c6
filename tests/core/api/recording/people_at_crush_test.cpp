#include "core/api/recording/people_at_crush.hpp"

#include <doctest/doctest.h>

#include <vector>

#include "tests/core/api/workplace.hpp"

namespace evenclaw::test {

namespace {

/// The people of one recording.
struct Crew {
  explicit Crew(Workplace& place)
      : book(VisitBook::open(place.ports(), place.start(), english()).value()) {}

  VisitBook book;
  Crush crush;
  PeopleAtCrush people{book, crush};
};

}  // namespace

TEST_CASE("what follows is called by who was named") {
  Workplace place;
  Crew crew(place);
  REQUIRE(crew.people.caller("Ben").ok());
  CHECK(crew.book.visit.caller == "Ben");
  CHECK_FALSE(crew.book.by.caller.is_nil());
  CHECK(crew.book.by.writer.is_nil());
}

TEST_CASE("two names at once are refused, and nobody takes over") {
  Workplace place;
  Crew crew(place);
  REQUIRE(crew.people.caller("Ben").ok());
  const PersonId ben = crew.book.by.caller;
  (void)crew.book.answers.given();
  REQUIRE(crew.people.caller("Anna and Tom").ok());
  CHECK(crew.book.by.caller == ben);
  const std::vector<ReplyItem> given = crew.book.answers.given();
  REQUIRE(given.size() == 1);
  CHECK(given[0].kind == ReplyKind::refused);
}

TEST_CASE("a name close to a known one is asked about, and said again it is somebody else") {
  Workplace place;
  Crew crew(place);
  REQUIRE(crew.people.caller("Anna").ok());
  const PersonId anna = crew.book.by.caller;
  REQUIRE(crew.people.caller("Anne").ok());
  CHECK(crew.book.by.caller == anna);
  REQUIRE(crew.people.caller("Anne").ok());
  CHECK(crew.book.visit.caller == "Anne");
  CHECK(crew.book.by.caller != anna);
}

TEST_CASE("in a file it is read as the known one, and asked about when the visit closes") {
  Workplace place;
  Crew crew(place);
  REQUIRE(crew.people.writer("Anna").ok());
  const PersonId anna = crew.book.by.writer;
  crew.book.typed = false;
  REQUIRE(crew.people.writer("Anne").ok());
  CHECK(crew.book.by.writer == anna);
  CHECK(crew.book.before.unread().size() == 1);
}

}  // namespace evenclaw::test
