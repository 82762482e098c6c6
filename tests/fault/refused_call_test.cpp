// Each call to the disk is refused once, over a whole day: nothing is told to be saved that is not,
// the message says what to do, and whoever begins again ends with a whole day.
#include <doctest/doctest.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <iostream>
#include <map>
#include <set>

#include "store/sqlite/backup.hpp"
#include "store/sqlite/check_file.hpp"
#include "store/sqlite/sqlite_store.hpp"
#include "tests/fault/after_power_cut.hpp"
#include "tests/fault/day_at_crush.hpp"
#include "tests/fault/held_against.hpp"
#include "tests/store/sound_file.hpp"
#include "tests/store/temporary_folder.hpp"

namespace evenclaw::test {
namespace {

constexpr std::uint64_t refused_day = 4711;
constexpr int last_cow = DayAtCrush::first_cow + 5;
constexpr int most_beginnings = 3;

/// A day with what is done in one, each step begun again after a fault.
class DayWithRefusal {
 public:
  DayWithRefusal(std::size_t call, DiskError error) : day_(file_, refused_day) {
    disk_.refuse(call, error);
    step([&] { return day_.record_until(DayAtCrush::first_cow + 2, true); });
    step([&] { return day_.record_until(last_cow, false); });
    step([&] { return day_.end_visit(); });
    step([&] { return back_up(file_, backup_); });
  }

  /// Everything is there in the end, also when power goes then.
  void expect_whole_day() {
    CHECK(day_.saved().size() == last_cow - DayAtCrush::first_cow + 1);
    expect_each_cow_once();
    const Verdict live = held_against(file_, day_.acknowledged(), day_.acknowledged().size());
    CHECK_MESSAGE(live.is_good(), live.why);
    const auto backup = check_file(backup_);
    REQUIRE(backup.ok());
    CHECK(is_sound(*backup));
  }

  void expect_whole_day_after_power_cut() {
    RandomStream random(refused_day, disk_.calls().size());
    lay_out(folder_.name(), after_power_cut(disk_.record(), disk_.record().acts.size(), random));
    const Verdict verdict = held_against(file_, day_.acknowledged(), day_.acknowledged().size());
    CHECK_MESSAGE(verdict.is_good(), verdict.why);
    CHECK(std::filesystem::exists(backup_));
  }

  [[nodiscard]] const std::vector<std::string>& calls() const { return disk_.calls(); }

  [[nodiscard]] const Faults& told() const { return told_; }

 private:
  template <class Step>
  void step(Step&& act) {
    for (int beginning = 1; beginning <= most_beginnings; ++beginning) {
      const Outcome done = act();
      if (done.ok()) return;
      told_.push_back(done.faults().front());
    }
    FAIL_CHECK("a step is refused again and again");
  }

  /// And under the entry that was told.
  void expect_each_cow_once() const {
    auto store = SqliteStore::open(file_, OpenMode::existing);
    REQUIRE(store.ok());
    EntrySelection turns;
    turns.kinds = {"turn"};
    std::map<std::string, int> times;
    std::set<EntryId> ids;
    REQUIRE((*store)
                ->read_entries(turns,
                               [&](const Entry& entry) {
                                 ids.insert(entry.envelope.id);
                                 const std::size_t at = entry.body->bytes().find("\"words\":[\"");
                                 ++times[entry.body->bytes().substr(at + 10, 3)];
                                 return true;
                               })
                .ok());
    for (const auto& saved : day_.saved()) {
      CAPTURE(saved.first);
      CHECK(ids.count(saved.second) == 1);
      CHECK(times[std::to_string(saved.first)] == 1);
    }
  }

  TemporaryFolder folder_;
  std::string file_ = folder_.file("records");
  std::string backup_ = folder_.file("backup");
  WatchedDisk disk_;
  DayAtCrush day_;
  Faults told_;
};

struct Refusal {
  std::size_t call;
  DiskError error;
};

/// Of a day's calls: each with either error when EVENCLAW_REFUSALS says "all", else one of each
/// kind on each file, the errors in turn.
std::vector<Refusal> refusals_of(const std::vector<std::string>& calls) {
  const char* named = std::getenv("EVENCLAW_REFUSALS");
  const bool wants_all = named != nullptr && std::string(named) == "all";
  std::map<std::string, std::vector<std::size_t>> by_kind;
  for (std::size_t call = 0; call < calls.size(); ++call) by_kind[calls[call]].push_back(call);
  std::vector<Refusal> refusals;
  DiskError error = DiskError::no_room;
  for (const auto& [kind, of_kind] : by_kind) {
    for (const std::size_t call : of_kind) {
      if (wants_all) refusals.push_back({call, DiskError::no_room});
      if (wants_all) refusals.push_back({call, DiskError::broken});
    }
    if (wants_all) continue;
    refusals.push_back({of_kind[of_kind.size() * 2 / 3], error});
    error = error == DiskError::broken ? DiskError::no_room : DiskError::broken;
  }
  return refusals;
}

const std::set<std::string> honest_slugs = {"disk-full", "disk-failed", "file-unreadable"};

void expect_honest(const Faults& told) {
  for (const Fault& fault : told) {
    CAPTURE(fault.message);
    CHECK(honest_slugs.count(fault.slug) == 1);
    CHECK_FALSE(fault.remedy.empty());
  }
}

}  // namespace

TEST_CASE("A call the disk refuses costs a beginning anew at most, never what was told saved") {
  constexpr std::size_t none = SIZE_MAX;
  const std::vector<std::string> calls = DayWithRefusal(none, DiskError::broken).calls();
  REQUIRE(calls.size() > 200);
  const std::vector<Refusal> refusals = refusals_of(calls);
  int told = 0;
  std::map<std::string, int> times;
  for (const Refusal& refusal : refusals) {
    CAPTURE(refusal.call);
    CAPTURE(calls[refusal.call]);
    DayWithRefusal day(refusal.call, refusal.error);
    ++times[calls[refusal.call].substr(0, calls[refusal.call].find(' '))];
    told += day.told().empty() ? 0 : 1;
    expect_honest(day.told());
    day.expect_whole_day();
    day.expect_whole_day_after_power_cut();
  }
  std::cout << refusals.size() << " refusals over a day of " << calls.size() << " calls, " << told
            << " of them told:";
  for (const auto& [what, count] : times) std::cout << " " << what << " " << count;
  std::cout << "\n";
  CHECK(told > 0);
}

}  // namespace evenclaw::test
