#include "store/memory/memory_directory.hpp"

#include <doctest/doctest.h>

#include "tests/store/sample_entries.hpp"

using namespace evenclaw;

TEST_CASE("a person is found by name in any case until she is removed") {
  MemoryDirectory directory;
  const PersonId anna{sample_id("person", 1)};
  REQUIRE(directory.add({anna, "Anna"}).ok());
  CHECK(directory.find("ANNA")->value().id == anna);
  REQUIRE(directory.remove(anna).ok());
  CHECK_FALSE(directory.find("Anna")->has_value());
  CHECK(shown_name(*directory.everybody(), anna) == "person removed");
}
