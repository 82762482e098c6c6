// Killed in the middle of what is done rarely: a migration, a backup, making a new file.
#include <doctest/doctest.h>

#include <filesystem>
#include <vector>

#include "core/base/random.hpp"
#include "store/sqlite/backup.hpp"
#include "store/sqlite/connection.hpp"
#include "store/sqlite/migration.hpp"
#include "tests/fault/filled_file.hpp"
#include "tests/fault/in_child.hpp"

using namespace evenclaw;

namespace {

constexpr std::int64_t entries = 60;

std::chrono::microseconds up_to(RandomStream& random, std::uint32_t microseconds) {
  return std::chrono::microseconds(random.below(microseconds));
}

/// Takes long enough to be killed in, and would lose everything if half of it stayed.
std::vector<Migration> long_migration() {
  auto migrations = all_migrations();
  migrations.push_back(
      {migrations.back().version + 1,
       "DELETE FROM entry_subject; DELETE FROM entry; CREATE TABLE photo (n INTEGER) STRICT;"
       "WITH RECURSIVE n (i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < 20000000)"
       " INSERT INTO photo SELECT i FROM n"});
  return migrations;
}

std::vector<std::string> files_in(const TemporaryFolder& folder, const std::string& ending) {
  std::vector<std::string> files;
  for (const auto& entry : std::filesystem::directory_iterator(folder.name())) {
    if (entry.path().extension() == ending) files.push_back(entry.path().string());
  }
  return files;
}

}  // namespace

TEST_CASE("killed while it is brought up to date, a file is as it was before") {
  RandomStream random(31, 1);
  int killed_within = 0;
  for (int kill = 0; kill < 12; ++kill) {
    CAPTURE(kill);
    const TemporaryFolder folder;
    const std::string file = folder.file("records");
    fill(file, entries);
    killed_after(up_to(random, 400'000), [&] {
      const Outcome ignored = caught([&] {
        Connection connection(file, Access::write);
        migrate(connection, long_migration());
      });
    });
    if (std::filesystem::exists(file + ".before-2")) ++killed_within;
    expect_entries(file, entries);
    CHECK(Connection(file, Access::read).integer_of("PRAGMA user_version") ==
          all_migrations().back().version);
  }
  // Otherwise nothing was proved.
  CHECK(killed_within > 0);
}

TEST_CASE("killed while it makes backups, every backup that has its name is whole") {
  RandomStream random(32, 1);
  const TemporaryFolder folder;
  fill(folder.file("records"), entries);
  for (int kill = 0; kill < 12; ++kill) {
    killed_after(up_to(random, 150'000), [&] {
      for (int i = 0; true; ++i) {
        const std::string name = std::to_string(kill) + "-" + std::to_string(i) + ".backup";
        if (!back_up(folder.file("records"), folder.file(name))) return;
      }
    });
  }
  const auto backups = files_in(folder, ".backup");
  CHECK(backups.size() > 3);
  for (const std::string& backup : backups) {
    CAPTURE(backup);
    const auto report = check_file(backup);
    REQUIRE(report.ok());
    CHECK(report->is_sound());
    CHECK(report->entries == entries);
  }
  expect_entries(folder.file("records"), entries);
}

TEST_CASE("killed while it makes a new file, the file can be taken into use") {
  RandomStream random(33, 1);
  const TemporaryFolder folder;
  for (int kill = 0; kill < 12; ++kill) {
    killed_after(up_to(random, 150'000), [&] {
      for (int i = 0; true; ++i) {
        const std::string name = std::to_string(kill) + "-" + std::to_string(i) + ".new";
        if (!SqliteStore::open(folder.file(name), OpenMode::create)) return;
      }
    });
  }
  const auto files = files_in(folder, ".new");
  CHECK(files.size() > 3);
  for (const std::string& file : files) {
    CAPTURE(file);
    const auto store = opened_store(file, OpenMode::create);
    CHECK(store->write(one_entry(1)).ok());
  }
}

TEST_CASE("killed between two writes, the log is whole and goes on without a hole") {
  RandomStream random(34, 1);
  const TemporaryFolder folder;
  const std::string file = folder.file("records");
  fill(file, 1);
  std::int64_t last = 1;
  for (int kill = 0; kill < 20; ++kill) {
    CAPTURE(kill);
    killed_after(up_to(random, 60'000), [&] {
      auto store = SqliteStore::open(file, OpenMode::existing);
      if (!store) return;
      for (std::int64_t i = last + 1; (*store)->write(one_entry(i)).ok(); ++i) {
      }
    });
    const auto store = opened_store(file, OpenMode::existing);
    const auto now = store->last_seq(sample_device(1), sample_herd(1).value);
    REQUIRE(now.ok());
    CHECK(*now >= last);
    last = *now;
  }
  CHECK(last > 20);
  expect_entries(file, last);
}
