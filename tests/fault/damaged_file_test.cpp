// Files that are not ours, not whole, newer, or not to be written: told apart, never changed.
#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>

#include "core/base/random.hpp"
#include "store/sqlite/connection.hpp"
#include "tests/fault/filled_file.hpp"
#include "tests/fault/in_child.hpp"

using namespace evenclaw;

namespace {

constexpr OpenMode every_mode[] = {OpenMode::create, OpenMode::existing, OpenMode::read_only};

std::string junk(std::uint64_t seed, std::size_t size) {
  RandomStream random(seed, 5);
  std::string bytes;
  for (std::size_t i = 0; i < size; ++i) bytes += static_cast<char>(random.below(256));
  return bytes;
}

/// Only our two companions may lie beside a file, and only while it is open.
bool has_companions(const std::string& file) {
  return std::filesystem::exists(file + "-wal") || std::filesystem::exists(file + "-shm") ||
         std::filesystem::exists(file + "-journal");
}

bool is_one_of_the_originals(const Entry& entry, std::int64_t count) {
  const std::int64_t number = entry.envelope.seq;
  return number >= 1 && number <= count && entry == one_entry(number).entries.front();
}

/// Reads everything; true when what came was original and what did not come was told.
bool reads_truly(const std::string& file, std::int64_t count) {
  auto store = SqliteStore::open(file, OpenMode::read_only);
  if (!store) {
    const std::string slug = slug_of(store);
    return slug == "file-damaged" || slug == "not-our-file" || slug == "file-newer";
  }
  std::int64_t seen = 0;
  bool all_original = true;
  const Outcome read = (*store)->read_everything([&](const Entry& entry) {
    ++seen;
    all_original = all_original && is_one_of_the_originals(entry, count);
    return true;
  });
  if (!all_original) return false;
  if (!read) return slug_of(read) == "file-damaged";
  const auto report = check_file(file);
  return seen == count || (report.ok() && !is_sound(*report));
}

/// Reads past the damage; true when all that came was original, in its order and once, and what did
/// not come was told with where it lies.
bool reads_past_damage(const std::string& file, std::int64_t count) {
  auto store = SqliteStore::open(file, OpenMode::read_only);
  if (!store) return true;
  std::int64_t seen = 0;
  std::int64_t last = 0;
  bool all_original = true;
  Faults damaged;
  const Outcome read = (*store)->read_what_can_be(
      [&](const Entry& entry) {
        const bool is_next = entry.envelope.seq > last;
        all_original = all_original && is_next && is_one_of_the_originals(entry, count);
        last = entry.envelope.seq;
        ++seen;
        return true;
      },
      [&](const Fault& fault) { damaged.push_back(fault); });
  if (!read) damaged.push_back(read.faults().front());
  const auto report = check_file(file);
  const bool is_told = !damaged.empty() || (report.ok() && !is_sound(*report));
  return all_original && (seen == count || is_told);
}

/// A file only its owner may write, in a folder that may be read by all.
struct GuardedFile {
  TemporaryFolder folder;
  std::string file = folder.file("records");

  GuardedFile(std::filesystem::perms of_folder, std::filesystem::perms of_file) {
    fill(file, 3);
    std::filesystem::permissions(file, of_file);
    std::filesystem::permissions(folder.name(), of_folder);
  }

  GuardedFile(const GuardedFile&) = delete;
  GuardedFile& operator=(const GuardedFile&) = delete;

  ~GuardedFile() { std::filesystem::permissions(folder.name(), std::filesystem::perms::owner_all); }

  [[nodiscard]] std::string opened_by_nobody(OpenMode mode) const {
    return in_child([&] {
      become_nobody();
      return slug_of_opening(file, mode);
    });
  }

  [[nodiscard]] std::string entries_read_by_nobody() const {
    return in_child([&] {
      become_nobody();
      auto store = SqliteStore::open(file, OpenMode::read_only);
      if (!store) return slug_of(store);
      int seen = 0;
      const Outcome read = (*store)->read_entries({}, [&](const Entry&) { return ++seen > 0; });
      return read.ok() ? std::to_string(seen) : slug_of(read);
    });
  }
};

using std::filesystem::perms;
constexpr perms read_by_all = perms::owner_read | perms::group_read | perms::others_read;
constexpr perms entered_by_all =
    read_by_all | perms::owner_exec | perms::group_exec | perms::others_exec;

}  // namespace

TEST_CASE("binary junk of any length is not our file and stays as it is") {
  const TemporaryFolder folder;
  for (const std::size_t size : {1U, 15U, 16U, 100U, 511U, 512U, 4096U, 100'000U}) {
    CAPTURE(size);
    const std::string bytes = junk(size, size);
    write_bytes(folder.file("junk"), bytes);
    for (const OpenMode mode : every_mode) {
      CHECK(slug_of_opening(folder.file("junk"), mode) == "not-our-file");
    }
    CHECK(bytes_of(folder.file("junk")) == bytes);
    CHECK_FALSE(has_companions(folder.file("junk")));
  }
}

TEST_CASE("junk that begins like a database is refused too") {
  const TemporaryFolder folder;
  for (std::uint64_t seed = 1; seed <= 20; ++seed) {
    CAPTURE(seed);
    const std::string bytes = std::string("SQLite format 3\0", 16) + junk(seed, 8176);
    write_bytes(folder.file("junk"), bytes);
    for (const OpenMode mode : every_mode) {
      const std::string slug = slug_of_opening(folder.file("junk"), mode);
      CHECK((slug == "not-our-file" || slug == "file-damaged"));
    }
    CHECK(bytes_of(folder.file("junk")) == bytes);
  }
}

TEST_CASE("a file cut off at any length is told, or reads truly") {
  const TemporaryFolder folder;
  constexpr std::int64_t count = 40;
  fill(folder.file("records"), count);
  const std::string bytes = bytes_of(folder.file("records"));
  for (std::size_t cut = 0; cut < bytes.size(); cut += bytes.size() / 37 + 1) {
    CAPTURE(cut);
    write_bytes(folder.file("cut"), bytes.substr(0, cut));
    CHECK(reads_truly(folder.file("cut"), count));
  }
}

TEST_CASE("a file with bytes overwritten anywhere is told, or reads truly") {
  const TemporaryFolder folder;
  constexpr std::int64_t count = 60;
  fill(folder.file("records"), count);
  const std::string whole = bytes_of(folder.file("records"));
  RandomStream random(17, 1);
  int told = 0;
  for (int i = 0; i < 150; ++i) {
    CAPTURE(i);
    std::string bytes = whole;
    const std::uint32_t at = random.below(static_cast<std::uint32_t>(bytes.size()));
    const std::uint32_t length = 1 + random.below(600);
    const std::uint64_t seed = random.next_u64();
    const std::string damage = junk(seed, std::min<std::size_t>(length, bytes.size() - at));
    bytes.replace(at, damage.size(), damage);
    write_bytes(folder.file("damaged"), bytes);
    CHECK(reads_truly(folder.file("damaged"), count));
    CHECK(reads_past_damage(folder.file("damaged"), count));
    const auto report = check_file(folder.file("damaged"));
    if (!report || !is_sound(*report)) ++told;
  }
  // The rest hit room that holds nothing.
  CHECK(told > 60);
}

TEST_CASE("a large file that was damaged in one page opens, and the check says where it hurts") {
  const TemporaryFolder folder;
  const std::string file = folder.file("records");
  fill(file, 4000);
  std::string bytes = bytes_of(file);
  REQUIRE(bytes.size() > 4'000'000);
  bytes.replace(bytes.size() / 4096 / 2 * 4096, 4096, junk(3, 4096));
  write_bytes(file, bytes);
  CHECK(slug_of_opening(file, OpenMode::existing).empty());
  const auto report = check_file(file);
  REQUIRE(report.ok());
  REQUIRE_FALSE(report->damaged.empty());
  CHECK(report->damaged.front().slug == "file-damaged");
}

TEST_CASE("one destroyed page takes no more of the log with it than lay in it") {
  const TemporaryFolder folder;
  const std::string file = folder.file("records");
  constexpr std::int64_t count = 4000;  // small files are looked over when they are opened
  fill(file, count);
  std::string bytes = bytes_of(file);
  const std::size_t at = bytes.find(to_text(one_entry(2000).entries.front().envelope.id));
  REQUIRE(at != std::string::npos);
  bytes.replace(at / 4096 * 4096, 4096, junk(7, 4096));
  write_bytes(file, bytes);
  const auto store = opened_store(file, OpenMode::read_only);
  std::int64_t seen = 0;
  Faults damaged;
  const Outcome read =
      store->read_what_can_be([&](const Entry&) { return ++seen > 0; },
                              [&](const Fault& fault) { damaged.push_back(fault); });
  CHECK(read.ok());
  REQUIRE_FALSE(damaged.empty());
  CHECK(damaged.size() < 20);
  CHECK(seen + static_cast<std::int64_t>(damaged.size()) == count);
  CHECK(damaged.front().slug == "file-damaged");
}

TEST_CASE("a file of a newer version is refused in every mode and stays as it is") {
  const TemporaryFolder folder;
  const std::string file = folder.file("records");
  fill(file, 3);
  { Connection(file, Access::write).run("PRAGMA user_version = 4711"); }
  const std::string before = bytes_of(file);
  for (const OpenMode mode : every_mode) {
    const auto refused = SqliteStore::open(file, mode);
    REQUIRE_FALSE(refused.ok());
    CHECK(refused.faults().front().slug == "file-newer");
    CHECK(refused.faults().front().message.find("4711") != std::string::npos);
  }
  CHECK(slug_of(check_file(file)) == "file-newer");
  CHECK(bytes_of(file) == before);
}

TEST_CASE("a file nobody may write is read, and refused for writing before anything is lost") {
  const GuardedFile records(entered_by_all, read_by_all);
  CHECK(records.opened_by_nobody(OpenMode::existing) == "file-read-only");
  CHECK(records.opened_by_nobody(OpenMode::create) == "file-read-only");
  CHECK(records.entries_read_by_nobody() == "3");
  CHECK_FALSE(has_companions(records.file));
}

TEST_CASE("so is a file that may be written in a folder that may not") {
  const GuardedFile records(entered_by_all, perms::all);
  CHECK(records.opened_by_nobody(OpenMode::existing) == "file-read-only");
  CHECK(records.entries_read_by_nobody() == "3");
}

TEST_CASE("so is a file that may not be written in a folder that may") {
  const GuardedFile records(perms::all, read_by_all);
  CHECK(records.opened_by_nobody(OpenMode::existing) == "file-read-only");
  CHECK(records.entries_read_by_nobody() == "3");
}

TEST_CASE("a file that may not even be read says so") {
  const GuardedFile records(entered_by_all, perms::none);
  for (const OpenMode mode : every_mode) {
    CHECK(records.opened_by_nobody(mode) == "file-unreadable");
  }
  std::filesystem::permissions(records.folder.name(), perms::owner_all);
  std::filesystem::permissions(records.file, perms::owner_read | perms::owner_write);
  CHECK(slug_of_opening(records.file, OpenMode::existing).empty());
}
