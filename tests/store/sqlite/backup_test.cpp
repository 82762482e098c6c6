#include "store/sqlite/backup.hpp"

#include <doctest/doctest.h>

#include <filesystem>
#include <vector>

#include "store/sqlite/check_file.hpp"
#include "store/sqlite/connection.hpp"
#include "store/sqlite/sqlite_store.hpp"
#include "tests/store/sample_entries.hpp"
#include "tests/store/sound_file.hpp"
#include "tests/store/sqlite/opened_store.hpp"
#include "tests/store/temporary_folder.hpp"

using namespace evenclaw;

namespace {

void write_entries(SqliteStore& store, std::int64_t from, std::int64_t to) {
  Write write;
  for (std::int64_t i = from; i <= to; ++i) {
    write.entries.push_back(sample_entry(i, sample_device(1), sample_herd(1)));
  }
  REQUIRE(store.write(write).ok());
}

std::vector<Entry> entries_in(SqliteStore& store) {
  std::vector<Entry> entries;
  REQUIRE(store
              .read_everything([&](const Entry& entry) {
                entries.push_back(entry);
                return true;
              })
              .ok());
  return entries;
}

std::string slug(const Outcome& outcome) {
  return outcome.ok() ? "" : outcome.faults().front().slug;
}

}  // namespace

TEST_CASE("a backup of a file that is open holds everything, as one file") {
  const TemporaryFolder folder;
  const auto store = opened_store(folder.file("records"), OpenMode::create);
  write_entries(*store, 1, 30);
  const std::string backup = folder.file("backup");
  REQUIRE(back_up(folder.file("records"), backup).ok());
  CHECK_FALSE(std::filesystem::exists(backup + ".part"));
  CHECK_FALSE(std::filesystem::exists(backup + "-wal"));

  const auto copy = opened_store(backup, OpenMode::read_only);
  CHECK(entries_in(*copy) == entries_in(*store));
  CHECK(entries_in(*copy).size() == 30);
}

TEST_CASE("a file is restored from a backup, and is a device of its own from then on") {
  const TemporaryFolder folder;
  {
    const auto store = opened_store(folder.file("records"), OpenMode::create);
    REQUIRE(store->set_identity(BusinessId{sample_id("business", 1)}, sample_device(1)).ok());
    write_entries(*store, 1, 5);
  }
  REQUIRE(back_up(folder.file("records"), folder.file("backup")).ok());
  const std::string backup_bytes = bytes_of(folder.file("backup"));
  REQUIRE(restore(folder.file("backup"), folder.file("again")).ok());
  CHECK(bytes_of(folder.file("backup")) == backup_bytes);

  const auto restored = opened_store(folder.file("again"), OpenMode::existing);
  CHECK(entries_in(*restored).size() == 5);
  CHECK(restored->identity()->copied);
  CHECK(restored->identity()->device == sample_device(1));
  write_entries(*restored, 6, 7);
  const auto report = check_file(folder.file("again"));
  REQUIRE(report.ok());
  CHECK(is_sound(*report));
  CHECK(report->entries == 7);
}

TEST_CASE("neither a backup nor a restore writes over a file") {
  const TemporaryFolder folder;
  { write_entries(*opened_store(folder.file("records"), OpenMode::create), 1, 2); }
  write_bytes(folder.file("precious"), "something else");
  CHECK(slug(back_up(folder.file("records"), folder.file("precious"))) == "output-exists");
  CHECK(slug(restore(folder.file("records"), folder.file("precious"))) == "output-exists");
  CHECK(slug(back_up(folder.file("records"), folder.file("records"))) == "output-exists");
  CHECK(bytes_of(folder.file("precious")) == "something else");
}

TEST_CASE("what cannot be backed up says why and leaves nothing behind") {
  const TemporaryFolder folder;
  write_bytes(folder.file("junk"), "not a file of records, but long enough to be read as one");
  { write_entries(*opened_store(folder.file("records"), OpenMode::create), 1, 2); }
  CHECK(slug(back_up(folder.file("nothing"), folder.file("backup"))) == "file-not-found");
  CHECK(slug(back_up(folder.file("junk"), folder.file("backup"))) == "not-our-file");
  CHECK(slug(back_up(folder.file("records"), folder.file("no/such/folder"))) == "file-unreadable");
  CHECK_FALSE(std::filesystem::exists(folder.file("backup")));
  CHECK_FALSE(std::filesystem::exists(folder.file("backup.part")));
}

TEST_CASE("a backup of a damaged file is refused, for it would not read back whole") {
  const TemporaryFolder folder;
  { write_entries(*opened_store(folder.file("records"), OpenMode::create), 1, 400); }
  std::string bytes = bytes_of(folder.file("records"));
  REQUIRE(bytes.size() > 100'000);
  bytes.replace(bytes.size() / 2, 20'000, 20'000, '\x5a');
  write_bytes(folder.file("records"), bytes);
  CHECK(slug(back_up(folder.file("records"), folder.file("backup"))) == "file-damaged");
  CHECK_FALSE(std::filesystem::exists(folder.file("backup")));
}

TEST_CASE("what an interrupted backup left is cleared away by the next") {
  const TemporaryFolder folder;
  { write_entries(*opened_store(folder.file("records"), OpenMode::create), 1, 2); }
  write_bytes(folder.file("backup.part"), "half a backup");
  REQUIRE(back_up(folder.file("records"), folder.file("backup")).ok());
  CHECK_FALSE(std::filesystem::exists(folder.file("backup.part")));
  CHECK(check_file(folder.file("backup"))->entries == 2);
}
