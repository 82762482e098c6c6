#include "store/sqlite/migration.hpp"

#include <doctest/doctest.h>

#include <filesystem>
#include <vector>

#include "store/sqlite/sqlite_store.hpp"
#include "tests/store/sample_entries.hpp"
#include "tests/store/temporary_folder.hpp"

using namespace evenclaw;

namespace {

struct OldFile {
  TemporaryFolder folder;
  std::string file = folder.file("records");

  OldFile() {
    auto store = SqliteStore::open(file, OpenMode::create);
    REQUIRE(store.ok());
    Write write;
    write.entries.push_back(sample_entry(1, sample_device(1), sample_herd(1)));
    REQUIRE((*store)->write(write).ok());
  }

  [[nodiscard]] std::int64_t asked(std::string_view sql) const {
    Connection connection(file, Access::read);
    return connection.integer_of(sql);
  }
};

std::vector<Migration> migrations_with(std::vector<std::string_view> more) {
  std::vector<Migration> migrations = all_migrations();
  for (const std::string_view sql : more) {
    migrations.push_back({migrations.back().version + 1, sql});
  }
  return migrations;
}

std::string slug_of_migrating(const std::string& file, const std::vector<Migration>& migrations) {
  const Outcome outcome = caught([&] {
    Connection connection(file, Access::write);
    migrate(connection, migrations);
  });
  return outcome.ok() ? "" : outcome.faults().front().slug;
}

}  // namespace

TEST_CASE("the migrations this program carries are numbered 1, 2, 3") {
  const auto migrations = all_migrations();
  REQUIRE_FALSE(migrations.empty());
  for (std::size_t i = 0; i < migrations.size(); ++i) {
    CHECK(migrations[i].version == static_cast<std::int64_t>(i + 1));
    CHECK_FALSE(migrations[i].sql.empty());
  }
}

TEST_CASE("every table is strict, and nothing counts up or fires by itself") {
  const OldFile old;
  CHECK(old.asked("SELECT count(*) FROM pragma_table_list WHERE strict = 0 AND schema = 'main'"
                  " AND name NOT LIKE 'sqlite_%'") == 0);
  CHECK(old.asked("SELECT count(*) FROM sqlite_schema WHERE type = 'trigger'") == 0);
  CHECK(old.asked("SELECT count(*) FROM sqlite_schema WHERE sql LIKE '%AUTOINCREMENT%'") == 0);
  CHECK(old.asked("SELECT count(*) FROM sqlite_schema WHERE sql LIKE '%REFERENCES%'") == 0);
}

TEST_CASE("the scope leads every key of the log") {
  const OldFile old;
  CHECK(old.asked("SELECT count(*) FROM sqlite_schema AS t, pragma_index_list(t.name) AS i,"
                  " pragma_index_info(i.name) AS c WHERE t.name IN ('entry', 'entry_subject',"
                  " 'redacted') AND c.seqno = 0") >= 6);
  CHECK(old.asked("SELECT count(*) FROM sqlite_schema AS t, pragma_index_list(t.name) AS i,"
                  " pragma_index_info(i.name) AS c WHERE t.name IN ('entry', 'entry_subject',"
                  " 'redacted') AND c.seqno = 0 AND c.name <> 'scope'") == 0);
}

TEST_CASE("an older file is brought up to date after a copy of it was laid beside") {
  const OldFile old;
  const auto migrations = migrations_with(
      {"CREATE TABLE photo (scope BLOB) STRICT", "ALTER TABLE photo ADD COLUMN digest BLOB"});
  CHECK(slug_of_migrating(old.file, migrations).empty());
  CHECK(old.asked("PRAGMA user_version") == migrations.back().version);
  CHECK(old.asked("SELECT count(digest) FROM photo") == 0);
  CHECK(old.asked("SELECT count(*) FROM entry") == 1);

  const std::string before = old.file + ".before-" + std::to_string(migrations.back().version);
  Connection copy(before, Access::read);
  CHECK(copy.integer_of("PRAGMA user_version") == all_migrations().back().version);
  CHECK(copy.integer_of("SELECT count(*) FROM entry") == 1);
}

TEST_CASE("a migration that fails leaves the file as it was, with the copy beside it") {
  const OldFile old;
  const auto migrations =
      migrations_with({"CREATE TABLE photo (scope BLOB) STRICT; DELETE FROM entry",
                       "INSERT INTO no_such_table VALUES (1)"});
  CHECK(slug_of_migrating(old.file, migrations) == "file-damaged");
  CHECK(old.asked("PRAGMA user_version") == all_migrations().back().version);
  CHECK(old.asked("SELECT count(*) FROM entry") == 1);
  CHECK(old.asked("SELECT count(*) FROM sqlite_schema WHERE name = 'photo'") == 0);
  CHECK(std::filesystem::exists(old.file + ".before-" + std::to_string(migrations.back().version)));
}

TEST_CASE("a copy from an earlier attempt is kept beside the new one") {
  const OldFile old;
  const auto broken = migrations_with({"INSERT INTO no_such_table VALUES (1)"});
  CHECK(slug_of_migrating(old.file, broken) == "file-damaged");
  CHECK(slug_of_migrating(old.file, broken) == "file-damaged");
  const std::string name = old.file + ".before-" + std::to_string(broken.back().version);
  CHECK(std::filesystem::exists(name));
  CHECK(std::filesystem::exists(name + "-2"));
}

TEST_CASE("a file up to date is left alone and gets no copy") {
  const OldFile old;
  CHECK(slug_of_migrating(old.file, all_migrations()).empty());
  for (const auto& entry : std::filesystem::directory_iterator(old.folder.name())) {
    CHECK(entry.path().string().find(".before-") == std::string::npos);
  }
}

TEST_CASE("a file of a newer version is refused and not touched") {
  const OldFile old;
  CHECK(slug_of_migrating(old.file, migrations_with({"CREATE TABLE photo (scope BLOB) STRICT"}))
            .empty());
  const std::string before = bytes_of(old.file);
  CHECK(slug_of_migrating(old.file, all_migrations()) == "file-newer");
  CHECK(bytes_of(old.file) == before);
}
