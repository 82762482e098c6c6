// Power goes at random points of a recorded day: what was acknowledged is there exactly once, what
// was not is there whole or not at all, the rows fit, and recording goes on.
#include <doctest/doctest.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <iostream>

#include "store/sqlite/backup.hpp"
#include "store/sqlite/check_file.hpp"
#include "tests/fault/after_power_cut.hpp"
#include "tests/fault/day_at_crush.hpp"
#include "tests/fault/held_against.hpp"
#include "tests/store/sound_file.hpp"
#include "tests/store/temporary_folder.hpp"

namespace evenclaw::test {
namespace {

constexpr int default_cuts = 40;
constexpr int cuts_without_syncs = 15;
constexpr int cuts_a_day = 20;
constexpr int cow_after_the_cut = 901;
constexpr std::uint64_t first_day = 20261027;

int wanted_cuts() {
  const char* named = std::getenv("EVENCLAW_CUTS");
  return named == nullptr ? default_cuts : std::max(1, std::atoi(named));
}

struct CutTally {
  int cuts = 0;
  int acknowledged = 0;
  int bad = 0;
  Verdict all;
};

/// Everything that was done in one day, and a backup made at its end.
class DayWithCuts {
 public:
  DayWithCuts(std::uint64_t seed, Durability durability)
      : random_(seed, 77), day_(file_, seed, durability) {
    const WatchedDisk disk;
    play();
    REQUIRE(back_up(file_, backup_).ok());
    backup_done_ = disk.record().acts.size();
    record_ = disk.record();
  }

  void cut(CutTally& tally) {
    const WatchedDisk quick;  // nothing is synced while it is looked at
    const std::size_t at = 1 + random_.below(static_cast<std::uint32_t>(record_.acts.size()));
    lay_out(folder_.name(), survivors(at));
    const std::size_t certain = acknowledged_by(at);
    Verdict verdict = held_against(file_, day_.acknowledged(), certain);
    if (verdict.is_good()) look_at_backup(verdict, at);
    if (verdict.is_good()) go_on(verdict);
    ++tally.cuts;
    tally.bad += verdict.is_good() ? 0 : 1;
    tally.acknowledged += static_cast<int>(certain);
    tally.all.lost += verdict.lost;
    tally.all.doubled += verdict.doubled;
    tally.all.half += verdict.half;
    if (tally.all.why.empty()) tally.all.why = verdict.why;
  }

 private:
  void play() {
    int cow = DayAtCrush::first_cow - 1;
    for (int part = 0; part < 4; ++part) {
      cow += 1 + static_cast<int>(random_.below(4));
      REQUIRE(day_.record_until(cow, random_.chance(0.5)).ok());
      if (part == 2) REQUIRE(day_.redact(cow).ok());
    }
    REQUIRE(day_.end_visit().ok());
  }

  std::map<std::string, std::string> survivors(std::size_t at) {
    auto files = after_power_cut(record_, at, random_);
    // It is never synced: after a power cut it may hold anything.
    if (random_.chance(0.5)) files[file_ + "-shm"] = std::string(32768, '\x5a');
    return files;
  }

  [[nodiscard]] std::size_t acknowledged_by(std::size_t acts) const {
    const auto& after = record_.acknowledged_after;
    return static_cast<std::size_t>(std::upper_bound(after.begin(), after.end(), acts) -
                                    after.begin());
  }

  void look_at_backup(Verdict& verdict, std::size_t at) const {
    const bool must_be_there = at >= backup_done_;
    if (!std::filesystem::exists(backup_)) {
      verdict.lost += must_be_there ? 1 : 0;
      if (must_be_there) verdict.why = "the backup is missing";
      return;
    }
    const auto report = check_file(backup_);
    if (report.ok() && is_sound(*report)) return;
    ++verdict.half;
    verdict.why = "a backup has its name and is not whole";
  }

  void go_on(Verdict& verdict) {
    DayAtCrush later(file_, random_.next_u64());
    later.begin_at(cow_after_the_cut);
    const Outcome recorded = later.record_until(cow_after_the_cut, false);
    if (recorded.ok() && later.saved().count(cow_after_the_cut) == 1) return;
    ++verdict.half;
    verdict.why = recorded.ok() ? "the next cow is not saved" : recorded.faults().front().message;
  }

  TemporaryFolder folder_;
  std::string file_ = folder_.file("records");
  std::string backup_ = folder_.file("backup");
  RandomStream random_;
  DayAtCrush day_;
  DiskRecord record_;
  std::size_t backup_done_ = 0;
};

CutTally cut_at_random(int wanted, Durability durability) {
  CutTally tally;
  for (std::uint64_t day = first_day; tally.cuts < wanted; ++day) {
    CAPTURE(day);
    DayWithCuts cut_day(day, durability);
    const int until = std::min(wanted, tally.cuts + cuts_a_day);
    while (tally.cuts < until) cut_day.cut(tally);
  }
  return tally;
}

/// Rule of three (Hanley and Lippman-Hand 1983), as for the kills.
void tell_cuts(const CutTally& tally) {
  std::cout << tally.cuts << " power cuts while recording: " << tally.acknowledged
            << " writes acknowledged before them, " << tally.all.lost << " entries lost, "
            << tally.all.doubled << " doubled, " << tally.all.half
            << " half written\n95 % bound: fewer than " << 300.0 / tally.cuts
            << " % of power cuts lose, double or halve anything\n";
}

}  // namespace

TEST_CASE("When power goes while recording, all that was acknowledged is there, whole and once") {
  const CutTally tally = cut_at_random(wanted_cuts(), Durability::kept);
  tell_cuts(tally);
  CAPTURE(tally.all.why);
  CHECK(tally.all.lost == 0);
  CHECK(tally.all.doubled == 0);
  CHECK(tally.all.half == 0);
  CHECK(tally.bad == 0);
  CHECK(tally.acknowledged > wanted_cuts());
}

TEST_CASE("The same power cuts find what is lost when SQLite is told not to sync") {
  const CutTally tally = cut_at_random(cuts_without_syncs, Durability::given_away);
  std::cout << "without syncs: " << tally.bad << " of " << tally.cuts
            << " power cuts cost something\n";
  CHECK(tally.all.lost > 0);
}

TEST_CASE("What was written down of a day gives the files as they are when everything is kept") {
  const TemporaryFolder folder;
  const WatchedDisk disk;
  DayAtCrush day(folder.file("records"), first_day);
  REQUIRE(day.record_until(DayAtCrush::first_cow + 5, false).ok());
  REQUIRE(back_up(folder.file("records"), folder.file("backup")).ok());
  const auto files = without_power_cut(disk.record(), disk.record().acts.size());
  REQUIRE(files.count(folder.file("backup")) == 1);
  for (const auto& file : files) {
    CAPTURE(file.first);
    CHECK(file.second == bytes_of(file.first));
  }
}

}  // namespace evenclaw::test
