#include <doctest/doctest.h>

#include "tests/conformance/every_store.hpp"
#include "tests/store/sample_entries.hpp"

using namespace evenclaw;

namespace {

PersonId person(std::int64_t number) {
  return PersonId{sample_id("person", number)};
}

}  // namespace

TEST_CASE("a person is found by her name in any case, and nobody else is") {
  for_every_store([](EmptyStore& opened) {
    Directory& directory = *opened.directory;
    taken(directory.add({person(1), "J\xc3\xbcrgen Bos"}));
    taken(directory.add({person(2), "Anna"}));
    const auto found = taken(directory.find("J\xc3\x9cRGEN bos"));
    REQUIRE(found.has_value());
    CHECK(found->id == person(1));
    CHECK(found->name == "J\xc3\xbcrgen Bos");
    CHECK_FALSE(taken(directory.find("Bos")).has_value());
    CHECK_FALSE(taken(directory.find("")).has_value());
  });
}

TEST_CASE("of two people with one name the smaller id is found") {
  for_every_store([](EmptyStore& opened) {
    for (int i = 1; i <= 4; ++i) taken(opened.directory->add({person(i), "Anna"}));
    PersonId smallest = person(1);
    for (int i = 2; i <= 4; ++i) smallest = std::min(smallest, person(i));
    CHECK(taken(opened.directory->find("anna"))->id == smallest);
  });
}

TEST_CASE("a removed person keeps her id and loses her name for good") {
  for_every_store([](EmptyStore& opened) {
    Directory& directory = *opened.directory;
    taken(directory.add({person(1), "Anna"}));
    taken(directory.remove(person(1)));
    CHECK_FALSE(taken(directory.find("Anna")).has_value());
    CHECK_FALSE(taken(directory.find("")).has_value());
    const auto everybody = taken(directory.everybody());
    REQUIRE(everybody.size() == 1);
    CHECK(everybody.front().removed);
    CHECK(everybody.front().name.empty());
    CHECK(shown_name(everybody, person(1)) == "person removed");

    taken(directory.add({person(1), "Anna"}));
    CHECK_FALSE(taken(directory.find("Anna")).has_value());
  });
}

TEST_CASE("a person already known stays as she is; one added as removed loses her name") {
  for_every_store([](EmptyStore& opened) {
    Directory& directory = *opened.directory;
    taken(directory.add({person(1), "Anna"}));
    taken(directory.add({person(1), "Berta"}));
    CHECK(taken(directory.everybody()).front().name == "Anna");
    taken(directory.add({person(1), "", true}));
    CHECK(taken(directory.everybody()).front().removed);
    taken(directory.remove(person(9)));
    CHECK(taken(directory.everybody()).size() == 1);
  });
}

TEST_CASE("everybody is listed by id") {
  for_every_store([](EmptyStore& opened) {
    for (int i = 1; i <= 6; ++i) taken(opened.directory->add({person(i), std::to_string(i)}));
    const auto everybody = taken(opened.directory->everybody());
    REQUIRE(everybody.size() == 6);
    for (std::size_t i = 1; i < everybody.size(); ++i) {
      CHECK(everybody[i - 1].id < everybody[i].id);
    }
  });
}
