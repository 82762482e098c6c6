// Files that were cut short: told with what to do, and a backup brings the day back.
#include <doctest/doctest.h>

#include <optional>
#include <set>
#include <string>

#include "core/base/random.hpp"
#include "store/sqlite/backup.hpp"
#include "store/sqlite/sqlite_store.hpp"
#include "tests/fault/after_power_cut.hpp"
#include "tests/fault/day_at_crush.hpp"
#include "tests/fault/held_against.hpp"
#include "tests/store/temporary_folder.hpp"

namespace evenclaw::test {
namespace {

constexpr int lengths_tried = 25;
constexpr std::uint64_t cut_short_day = 99;

}  // namespace

TEST_CASE("Records cut short at any length are refused with the way back, and a backup is whole") {
  const TemporaryFolder folder;
  const std::string file = folder.file("records");
  DayAtCrush day(file, cut_short_day);
  {
    const WatchedDisk quick;
    REQUIRE(day.record_until(DayAtCrush::first_cow + 4, false).ok());
    REQUIRE(back_up(file, folder.file("backup")).ok());
  }
  const std::string whole = bytes_of(file);
  RandomStream random(cut_short_day, 2);
  for (int i = 0; i < lengths_tried; ++i) {
    const std::size_t length = 1 + random.below(static_cast<std::uint32_t>(whole.size() - 1));
    CAPTURE(length);
    write_bytes(file, whole.substr(0, length));
    const Outcome refused = day.record_until(DayAtCrush::first_cow + 5, false);
    REQUIRE_FALSE(refused.ok());
    const Fault& fault = refused.faults().front();
    CHECK((fault.slug == "file-damaged" || fault.slug == "not-our-file"));
    CHECK((fault.remedy.find("backup") != std::string::npos || fault.slug == "not-our-file"));
    CHECK(bytes_of(file).size() == length);
  }
  const WatchedDisk quick;
  REQUIRE(restore(folder.file("backup"), folder.file("restored")).ok());
  CHECK(writes_held(folder.file("restored"), day.acknowledged()) == day.acknowledged().size());
}

TEST_CASE("A write-ahead log cut short leaves an earlier moment of the day, whole") {
  const TemporaryFolder folder;
  const std::string file = folder.file("records");
  DayAtCrush day(file, cut_short_day);
  DiskRecord record;
  {
    const WatchedDisk disk;
    REQUIRE(day.record_until(DayAtCrush::first_cow + 6, true).ok());
    record = disk.record();
  }
  RandomStream random(cut_short_day, 3);
  std::set<std::size_t> held;
  const WatchedDisk quick;
  for (int i = 0; i < lengths_tried; ++i) {
    const std::size_t after = record.acknowledged_after[random.below(
        static_cast<std::uint32_t>(record.acknowledged_after.size()))];
    auto files = without_power_cut(record, after);
    std::string& log = files[file + "-wal"];
    log.resize(random.below(static_cast<std::uint32_t>(log.size()) + 1));
    lay_out(folder.name(), files);
    CAPTURE(after);
    CAPTURE(log.size());
    const auto writes = writes_held(file, day.acknowledged());
    REQUIRE(writes);
    held.insert(*writes);
  }
  CHECK(held.size() > 2);
}

}  // namespace evenclaw::test
