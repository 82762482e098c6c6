#include "core/api/people.hpp"

#include <doctest/doctest.h>

#include "tests/core/api/workplace.hpp"

namespace evenclaw::test {

namespace {

std::string slug_of(const Result<PersonId>& answer) {
  return answer ? "" : answer.faults().front().slug;
}

}  // namespace

TEST_CASE("a name is the same person however its letters are written") {
  Workplace place;
  const PersonId anna = certain_person(place.ports(), "Anna", false).value();
  CHECK(certain_person(place.ports(), " anna ", false).value() == anna);
  CHECK(certain_person(place.ports(), "Ben", false).value() != anna);
}

TEST_CASE("a name a letter off a known one is asked about, and sure enters somebody else") {
  Workplace place;
  const PersonId anna = certain_person(place.ports(), "Anna", false).value();
  const auto asked = certain_person(place.ports(), "Anne", false);
  CHECK(slug_of(asked) == "answer-needed");
  CHECK(asked.faults().front().remedy.find("Anna") != std::string::npos);
  CHECK(certain_person(place.ports(), "Anne", true).value() != anna);
}

TEST_CASE("two letters are a slip in a long name only") {
  Workplace place;
  (void)certain_person(place.ports(), "Annika", false).value();
  (void)certain_person(place.ports(), "Ben", false).value();
  CHECK(slug_of(certain_person(place.ports(), "Annicka", false)) == "answer-needed");
  CHECK(slug_of(certain_person(place.ports(), "Anikka", false)) == "answer-needed");
  CHECK(slug_of(certain_person(place.ports(), "Bill", false)).empty());
}

TEST_CASE("nobody has no name, nor one that cannot be shown") {
  Workplace place;
  CHECK(slug_of(certain_person(place.ports(), "  ", false)) == "usage");
  CHECK(slug_of(certain_person(place.ports(), "An\nna", true)) == "usage");
}

TEST_CASE("a person who was removed reads so, and a name nobody has is told with the nearest") {
  Workplace place;
  const PersonId anna = certain_person(place.ports(), "Anna", false).value();
  const auto wrong = remove_person(place.ports(), "Anne");
  CHECK(slug_of(wrong) == "person-not-found");
  CHECK(wrong.faults().front().remedy == "Did you mean Anna?");
  CHECK(remove_person(place.ports(), "anna").value() == anna);
  CHECK(name_of(place.directory.everybody().value(), anna) == "person removed");
  CHECK(name_of(place.directory.everybody().value(), PersonId{}).empty());
}

TEST_CASE("two names are not taken for one person") {
  for (const char* name : {"Ben and Anna", "Ben & Anna", "Ben, Anna", "Ben/Anna", "Ben und Anna"}) {
    CAPTURE(name);
    CHECK(names_two_people(name));
    Workplace place;
    const auto person = person_named(place.ports(), name, true);
    REQUIRE_FALSE(person);
    CHECK(person.faults().front().token == name);
    CHECK(place.directory.everybody().value().empty());
  }
}

TEST_CASE("a name of two words is one person") {
  for (const char* name : {"Anna Andersen", "Ben Sand", "And", "Ann-Kathrin Undset"}) {
    CAPTURE(name);
    CHECK_FALSE(names_two_people(name));
  }
}

}  // namespace evenclaw::test
