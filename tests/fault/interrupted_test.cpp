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
  for (int kill = 0; kill < 12; ++kill) {
    CAPTURE(kill);
    const TemporaryFolder folder;
    const std::string file = folder.file("records");
    fill(file, entries);
    const auto copying = [&] {
      return std::filesystem::exists(file + ".before-2.part") ||
             std::filesystem::exists(file + ".before-2");
    };
    const auto copied = [&] { return std::filesystem::exists(file + ".before-2"); };
    const auto work = [&] {
      const Outcome ignored = caught([&] {
        Connection connection(file, Access::write);
        migrate(connection, long_migration());
      });
    };
    const auto delay = up_to(random, 150'000);
    if (kill % 3 == 0) {
      killed_after(delay / 50, copying, work);
      CHECK(copying());
    } else {
      killed_after(delay, copied, work);
      CHECK(copied());
    }
    expect_entries(file, entries);
    CHECK(Connection(file, Access::read).integer_of("PRAGMA user_version") ==
          all_migrations().back().version);
  }
}

TEST_CASE("killed while it makes backups, every backup that has its name is whole") {
  RandomStream random(32, 1);
  const TemporaryFolder folder;
  fill(folder.file("records"), entries);
  for (int kill = 0; kill < 10; ++kill) {
    const auto name = [&](int i) {
      return folder.file(std::to_string(kill) + "-" + std::to_string(i) + ".backup");
    };
    const auto first_done = [&] { return std::filesystem::exists(name(0)); };
    killed_after(up_to(random, 40'000), first_done, [&] {
      for (int i = 0; back_up(folder.file("records"), name(i)).ok(); ++i) {
      }
    });
  }
  const auto backups = files_in(folder, ".backup");
  CHECK(backups.size() >= 10);
  for (const std::string& backup : backups) {
    CAPTURE(backup);
    const auto report = check_file(backup);
    REQUIRE(report.ok());
    CHECK(is_sound(*report));
    CHECK(report->entries == entries);
  }
  expect_entries(folder.file("records"), entries);
}

TEST_CASE("killed while it makes a new file, the file can be taken into use") {
  RandomStream random(33, 1);
  const TemporaryFolder folder;
  for (int kill = 0; kill < 12; ++kill) {
    CAPTURE(kill);
    const std::string file = folder.file(std::to_string(kill));
    const auto begun = [&] { return std::filesystem::exists(file); };
    killed_after(up_to(random, 20'000), begun,
                 [&] { (void)SqliteStore::open(file, OpenMode::create); });
    REQUIRE(begun());
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
  // On a machine that is busy with other things a kill may come before anything is written.
  for (int kill = 0; kill < 20 || (last <= 10 && kill < 500); ++kill) {
    CAPTURE(kill);
    const auto opened = [&] { return std::filesystem::exists(file + "-wal"); };
    killed_after(up_to(random, 30'000), opened, [&] {
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
  CHECK(last > 10);
  expect_entries(file, last);
}
