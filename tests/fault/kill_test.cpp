// Records through a pipe while being killed at random points: what was acknowledged as saved is in
// the log exactly once, nothing is doubled, and recording goes on.
#include <doctest/doctest.h>

#include <algorithm>
#include <chrono>
#include <cstdlib>
#include <iostream>
#include <map>
#include <sstream>
#include <string>
#include <vector>

#include "core/base/random.hpp"
#include "tests/cli/program.hpp"
#include "tests/fault/called_cows.hpp"

namespace evenclaw::test {
namespace {

constexpr int kills_per_file = 20;
constexpr int default_kills = 300;
constexpr int first_cow = 1001;
constexpr int milliseconds_of_work = 60;

using SteadyClock = std::chrono::steady_clock;

int wanted_kills() {
  const char* named = std::getenv("EVENCLAW_KILLS");
  return named == nullptr ? default_kills : std::max(1, std::atoi(named));
}

std::string lines_of_cow(std::uint64_t seed, int cow) {
  std::string lines;
  for (const std::string& line : called_of_cow(seed, cow)) lines += line + "\n";
  return lines;
}

int count_of(const std::string& text, const std::string& part) {
  int count = 0;
  for (std::size_t at = text.find(part); at != std::string::npos; at = text.find(part, at + 1)) {
    ++count;
  }
  return count;
}

struct Tally {
  int kills = 0;
  int acknowledged = 0;
  int lost = 0;
  int doubled = 0;
  int there_already = 0;  // durable, but killed before the acknowledgement went out
};

/// One file of records, filled by a writer whose program is killed again and again. He goes on with
/// the first cow that was not acknowledged, as a careful one would.
class KilledDay {
 public:
  KilledDay(std::uint64_t seed, Tally& tally) : seed_(seed), random_(seed, 0), tally_(tally) {
    const Ran started =
        workshop_.run({"start", "Home Farm", "--new-herd", "--feet", "all", "--day", "2026-10-27"});
    REQUIRE(started.exit == 0);
  }

  void record_and_kill() {
    const bool while_starting = random_.chance(0.2);
    const auto wait =
        static_cast<int>(random_.below(while_starting ? starting_ms_ : milliseconds_of_work));
    in_flight_most_ = 1 + random_.below(12);
    Conversation record(workshop_, {"record", "-"});
    REQUIRE(record.is_running());
    const SteadyClock::time_point begin = SteadyClock::now();
    feed(record, begin + std::chrono::milliseconds(while_starting ? wait : 20'000),
         !while_starting);
    if (!while_starting) {
      starting_ms_ = std::max<std::uint32_t>(10, ms_since(begin));
      feed(record, SteadyClock::now() + std::chrono::milliseconds(wait), false);
    }
    const Ran ran = record.killed();
    REQUIRE(ran.signal == SIGKILL);
    ++tally_.kills;
    take_acknowledged(ran.out);
    hold_against_the_log();
  }

  /// What was never acknowledged is given once more, to the end.
  void finish() {
    const Ran ran = workshop_.run({"record", "-"}, lines_from(next_unanswered(), given_));
    CHECK(ran.exit == 0);
    take_acknowledged(ran.out);
    hold_against_the_log();
    CHECK(next_unanswered() == given_);
    for (int cow = first_cow; cow < given_; ++cow) {
      CAPTURE(cow);
      CHECK(times_in_log(cow) == 1);
    }
    const Ran checked = workshop_.run({"check"});
    CHECK_MESSAGE(checked.exit == 0, checked.out, checked.err);
    tally_.acknowledged += static_cast<int>(saved_.size());
  }

 private:
  static std::uint32_t ms_since(SteadyClock::time_point begin) {
    return static_cast<std::uint32_t>(
        std::chrono::duration_cast<std::chrono::milliseconds>(SteadyClock::now() - begin).count());
  }

  /// Keeps at most so many cows unanswered, until the time is over or the first answer came.
  void feed(Conversation& record, SteadyClock::time_point end, bool until_answered) {
    if (waiting_.empty()) sent_ = next_unanswered();
    while (SteadyClock::now() < end) {
      const auto answers = static_cast<std::uint32_t>(count_of(record.heard(), "\n"));
      if (until_answered && answers > 0) return;
      const auto in_flight = static_cast<std::uint32_t>(sent_ - next_unanswered()) - answers;
      if (waiting_.empty() && in_flight < in_flight_most_) waiting_ = lines_of(sent_++);
      waiting_.erase(0, record.write_some(waiting_));
      static_cast<void>(record.read_for(waiting_.empty() ? 1 : 0));
    }
  }

  std::string lines_of(int cow) {
    given_ = std::max(given_, cow + 1);
    return lines_of_cow(seed_, cow);
  }

  std::string lines_from(int cow, int end) {
    std::string all;
    for (; cow < end; ++cow) all += lines_of(cow);
    return all;
  }

  /// Whole lines only: the last one may have been cut off by the kill.
  void take_acknowledged(const std::string& heard) {
    waiting_.clear();
    std::istringstream lines(heard.substr(0, heard.rfind('\n') + 1));
    for (std::string line; std::getline(lines, line);) {
      const bool again = line.rfind("there already ", 0) == 0;
      if (!again && line.rfind("saved ", 0) != 0) continue;
      std::istringstream words(line.substr(again ? 14 : 6));
      int cow = 0;
      std::string entry;
      words >> cow >> entry;
      tally_.there_already += again ? 1 : 0;
      saved_[cow] = entry;
    }
  }

  [[nodiscard]] int next_unanswered() const {
    return saved_.empty() ? first_cow : saved_.rbegin()->first + 1;
  }

  [[nodiscard]] int times_in_log(int cow) const {
    return count_of(log_, "\"words\":[\"" + std::to_string(cow) + " ");
  }

  void hold_against_the_log() {
    const Ran log = workshop_.run({"log"});
    CHECK(log.exit == 0);
    log_ = log.out;
    int expected = first_cow;
    for (const auto& saved : saved_) {
      const int cow = saved.first;
      CAPTURE(cow);
      CHECK(cow == expected++);  // acknowledged in the order given
      const int times = count_of(log_, "\"id\":\"" + saved.second + "\"");
      CHECK(times == 1);
      tally_.lost += times == 0 ? 1 : 0;
      tally_.doubled += times > 1 || times_in_log(cow) > 1 ? 1 : 0;
    }
  }

  Workshop workshop_;
  std::uint64_t seed_;
  RandomStream random_;
  Tally& tally_;
  std::map<int, std::string> saved_;  // by cow: the entry that was acknowledged
  std::string log_;
  std::string waiting_;  // of the cow that is being written into the pipe
  int sent_ = first_cow;
  int given_ = first_cow;  // behind the last cow that was ever sent
  std::uint32_t in_flight_most_ = 1;
  std::uint32_t starting_ms_ = 100;
};

/// Rule of three (Hanley and Lippman-Hand 1983): nothing in n trials, so with 95 % confidence the
/// rate is below 3 / n.
void tell(const Tally& tally) {
  std::cout << tally.kills << " kills while recording: " << tally.acknowledged
            << " turns acknowledged, " << tally.lost << " lost, " << tally.doubled << " doubled; "
            << tally.there_already
            << " were durable before their acknowledgement was cut off\n95 % bound: fewer than "
            << 300.0 / tally.kills << " % of kills lose or double anything\n";
}

}  // namespace

TEST_CASE("Killed while recording, nothing acknowledged is lost and nothing is doubled") {
  constexpr std::uint64_t seed = 20261027;
  Tally tally;
  const int wanted = wanted_kills();
  for (std::uint64_t file = 0; tally.kills < wanted; ++file) {
    CAPTURE(file);
    KilledDay day(seed + file, tally);
    const int until = std::min(wanted, tally.kills + kills_per_file);
    while (tally.kills < until) day.record_and_kill();
    day.finish();
  }
  tell(tally);
  CHECK(tally.lost == 0);
  CHECK(tally.doubled == 0);
  CHECK(tally.acknowledged > wanted);
}

}  // namespace evenclaw::test
