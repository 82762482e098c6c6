#include "store/sqlite/open_file.hpp"

#include <doctest/doctest.h>

#include <filesystem>

#include "store/sqlite/migration.hpp"
#include "tests/store/temporary_folder.hpp"

using namespace evenclaw;

namespace {

std::string slug_of_opening(const std::string& file, OpenMode mode) {
  const Outcome outcome = caught([&] { opened(file, mode); });
  return outcome.ok() ? "" : outcome.faults().front().slug;
}

std::string text_of(Connection& connection, std::string_view sql) {
  auto statement = connection.prepared(sql);
  return statement->step() ? std::string(statement->text_at(0)) : "";
}

}  // namespace

TEST_CASE("a new file is marked, has a write-ahead log and syncs every commit") {
  const TemporaryFolder folder;
  Connection connection = opened(folder.file("records"), OpenMode::create);
  CHECK(text_of(connection, "PRAGMA journal_mode") == "wal");
  CHECK(connection.integer_of("PRAGMA synchronous") == 2);
  CHECK(connection.integer_of("PRAGMA secure_delete") == 1);
  CHECK(connection.integer_of("PRAGMA application_id") == application_id);
  CHECK(connection.integer_of("PRAGMA user_version") == all_migrations().back().version);
}

TEST_CASE("a name that leads to no file is told apart by what was asked for") {
  const TemporaryFolder folder;
  CHECK(slug_of_opening(folder.file("no"), OpenMode::existing) == "file-not-found");
  CHECK(slug_of_opening(folder.file("no"), OpenMode::read_only) == "file-not-found");
  CHECK(slug_of_opening(folder.file("no/such"), OpenMode::create) == "file-not-found");
  CHECK(slug_of_opening("", OpenMode::existing) != "");
  CHECK(slug_of_opening(folder.name(), OpenMode::create) == "file-unreadable");
  CHECK_FALSE(std::filesystem::exists(folder.file("no")));
}

TEST_CASE("an empty file is taken for a new one only where a new one may be made") {
  const TemporaryFolder folder;
  write_bytes(folder.file("empty"), "");
  CHECK(slug_of_opening(folder.file("empty"), OpenMode::existing) == "not-our-file");
  CHECK(slug_of_opening(folder.file("empty"), OpenMode::read_only) == "not-our-file");
  CHECK(std::filesystem::file_size(folder.file("empty")) == 0);
  CHECK(slug_of_opening(folder.file("empty"), OpenMode::create).empty());
  CHECK(slug_of_opening(folder.file("empty"), OpenMode::existing).empty());
}

TEST_CASE("a database of another program is refused and not touched") {
  const TemporaryFolder folder;
  const std::string file = folder.file("other");
  { Connection(file, Access::create).run("CREATE TABLE recipes (name TEXT) STRICT"); }
  const std::string before = bytes_of(file);
  for (const OpenMode mode : {OpenMode::create, OpenMode::existing, OpenMode::read_only}) {
    CHECK(slug_of_opening(file, mode) == "not-our-file");
  }
  CHECK(bytes_of(file) == before);
  CHECK_FALSE(std::filesystem::exists(file + "-wal"));
}

TEST_CASE("a file name that means something to SQLite is still only a name") {
  const TemporaryFolder folder;
  const std::filesystem::path before = std::filesystem::current_path();
  std::filesystem::current_path(folder.name());
  CHECK(slug_of_opening(":memory:", OpenMode::create).empty());
  CHECK(slug_of_opening("file:a?mode=memory", OpenMode::create).empty());
  CHECK(std::filesystem::exists(":memory:"));
  CHECK(std::filesystem::exists("file:a?mode=memory"));
  std::filesystem::current_path(before);
}
