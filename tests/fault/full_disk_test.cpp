// A disk that fills up while turns are recorded: what was acknowledged stays, the rest is refused.
#include <doctest/doctest.h>

#include <filesystem>

#include "store/sqlite/backup.hpp"
#include "tests/fault/filled_file.hpp"
#include "tests/fault/in_child.hpp"
#include "tests/fault/small_disk.hpp"

using namespace evenclaw;

namespace {

constexpr std::int64_t never_that_many = 5000;

struct Recorded {
  std::int64_t acknowledged = 0;
  std::string slug;  // of the first refusal
};

/// Writes entry after entry until one is refused.
Recorded record_until_refused(SqliteStore& store, std::int64_t from) {
  Recorded recorded{from - 1, ""};
  while (recorded.slug.empty() && recorded.acknowledged < never_that_many) {
    recorded.slug = slug_of(store.write(one_entry(recorded.acknowledged + 1)));
    if (recorded.slug.empty()) ++recorded.acknowledged;
  }
  return recorded;
}

std::string told(const Recorded& recorded, SqliteStore& store) {
  const auto last = store.last_seq(sample_device(1), sample_herd(1).value);
  const std::string readable = last.ok() ? std::to_string(*last) : slug_of(last);
  return recorded.slug + " " + std::to_string(recorded.acknowledged) + " " + readable;
}

/// "disk-full 57 57": why it stopped, the last acknowledged, the last that can be read.
std::int64_t expect_full_disk(const std::string& said) {
  CAPTURE(said);
  REQUIRE(said.rfind("disk-full ", 0) == 0);
  const std::size_t second = said.find(' ', 10);
  const std::int64_t acknowledged = std::stoll(said.substr(10, second - 10));
  CHECK(acknowledged < never_that_many);
  CHECK(std::stoll(said.substr(second + 1)) == acknowledged);
  return acknowledged;
}

}  // namespace

TEST_CASE("when the file may not grow any more, all that was acknowledged is kept and no more") {
  const TemporaryFolder folder;
  const std::string file = folder.file("records");
  fill(file, 20);
  const std::string said = in_child([&] {
    auto store = SqliteStore::open(file, OpenMode::existing);
    if (!store) return slug_of(store);
    limit_file_size(400'000);
    return told(record_until_refused(**store, 21), **store);
  });
  const std::int64_t acknowledged = expect_full_disk(said);
  CHECK(acknowledged > 20);
  expect_entries(file, acknowledged);

  const auto store = opened_store(file, OpenMode::existing);
  CHECK(store->write(one_entry(acknowledged + 1)).ok());
}

TEST_CASE("a write too large for the room that is left is refused whole, a small one still goes") {
  const TemporaryFolder folder;
  const std::string file = folder.file("records");
  fill(file, 20);
  const std::string said = in_child([&] {
    auto store = SqliteStore::open(file, OpenMode::existing);
    if (!store) return slug_of(store);
    limit_file_size(400'000);
    Write large;
    large.draft = "half a turn";
    for (std::int64_t i = 21; i < 2000; ++i) {
      large.entries.push_back(one_entry(i).entries.front());
    }
    const std::string refused = slug_of((*store)->write(large));
    const std::string small = slug_of((*store)->write(one_entry(21)));
    return refused + "/" + small + "/" + *(*store)->draft();
  });
  CHECK(said == "disk-full//");
  expect_entries(file, 21);
}

TEST_CASE("neither a new file nor a backup without room leaves half a file under its name") {
  const TemporaryFolder folder;
  fill(folder.file("records"), 300);
  const std::string said = in_child([&] {
    limit_file_size(20'000);
    return slug_of(back_up(folder.file("records"), folder.file("backup"))) + "/" +
           slug_of_opening(folder.file("new"), OpenMode::create);
  });
  CHECK(said == "disk-full/disk-full");
  CHECK_FALSE(std::filesystem::exists(folder.file("backup")));
  CHECK_FALSE(std::filesystem::exists(folder.file("backup.part")));
  CHECK(slug_of_opening(folder.file("new"), OpenMode::create).empty());
}

TEST_CASE("a disk that is full: as with a limit, also when there is no room for a start") {
  const TemporaryFolder folder;
  SmallDisk disk(folder.file("disk"), 600'000);
  fill(disk.file("records"), 5);
  {
    const auto store = opened_store(disk.file("records"), OpenMode::existing);
    const std::string said = told(record_until_refused(*store, 6), *store);
    const std::int64_t acknowledged = expect_full_disk(said);
    CHECK(disk.refusals() > 0);
    CHECK(slug_of_opening(disk.file("new"), OpenMode::create) == "disk-full");
    CHECK(slug_of(back_up(disk.file("records"), disk.file("backup"))) == "disk-full");
    CHECK_FALSE(std::filesystem::exists(disk.file("backup")));

    std::filesystem::remove(disk.file("new"));
    CHECK(back_up(disk.file("records"), folder.file("backup")).ok());
    CHECK(check_file(folder.file("backup"))->entries == acknowledged);
  }
  const auto reopened = SqliteStore::open(disk.file("records"), OpenMode::read_only);
  CHECK(reopened.ok());
}
