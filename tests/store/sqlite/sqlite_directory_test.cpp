#include "store/sqlite/sqlite_directory.hpp"

#include <doctest/doctest.h>

#include "store/sqlite/sqlite_store.hpp"
#include "tests/store/sample_entries.hpp"
#include "tests/store/sqlite/opened_store.hpp"
#include "tests/store/temporary_folder.hpp"

using namespace evenclaw;

TEST_CASE("names are kept in the file of the log and may outlive the store that opened it") {
  const TemporaryFolder folder;
  const PersonId anna{sample_id("person", 1)};
  {
    auto store = SqliteStore::open(folder.file("records"), OpenMode::create);
    REQUIRE(store.ok());
    SqliteDirectory directory(**store);
    *store = nullptr;
    REQUIRE(directory.add({anna, "Anna Boer"}).ok());
  }
  auto store = SqliteStore::open(folder.file("records"), OpenMode::read_only);
  REQUIRE(store.ok());
  SqliteDirectory directory(**store);
  const auto found = directory.find("anna boer");
  REQUIRE(found.ok());
  REQUIRE(found->has_value());
  CHECK((*found)->id == anna);
  CHECK(directory.remove(anna).faults().front().slug == "file-read-only");
}

TEST_CASE("a removed name cannot be found in the bytes of the file any more, in any spelling") {
  const TemporaryFolder folder;
  const std::string file = folder.file("records");
  auto store = SqliteStore::open(file, OpenMode::create);
  REQUIRE(store.ok());
  SqliteDirectory directory(**store);
  const PersonId person{sample_id("person", 1)};
  REQUIRE(directory.add({person, "Wilhelmina Kuipers"}).ok());
  REQUIRE(file_holds(file, "Wilhelmina"));
  REQUIRE(directory.remove(person).ok());
  CHECK_FALSE(file_holds(file, "Wilhelmina"));
  CHECK_FALSE(file_holds(file, "wilhelmina"));
}
