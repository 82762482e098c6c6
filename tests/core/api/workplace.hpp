// A store, a directory, a clock and ids for one device in a test: everything a use case needs.
#pragma once

#include <array>
#include <cstdint>
#include <initializer_list>
#include <string>
#include <string_view>
#include <vector>

#include "core/api/business.hpp"
#include "core/api/herds.hpp"
#include "core/api/ports.hpp"
#include "core/api/recording.hpp"
#include "core/api/visits.hpp"
#include "core/base/random.hpp"
#include "core/trade/call_line/language.hpp"
#include "store/memory/memory_directory.hpp"
#include "store/memory/memory_store.hpp"

namespace evenclaw::test {

/// Shows the time it was set to and one second more at each look.
class SteppingClock final : public Clock {
 public:
  Instant now() override {
    time_.ms += 1000;
    return time_;
  }

  void pass(int minutes) { time_.ms += std::int64_t{minutes} * 60'000; }

  void set(Day day) { time_ = {std::int64_t{day.since_epoch} * 86'400'000 + 28'800'000, 60}; }

 private:
  Instant time_;
};

/// Ids that are the same in every run and greater with every call.
class SeededIds final : public FreshIds {
 public:
  explicit SeededIds(std::uint64_t seed) : random_(seed, 0) {}

  Uuid next() override {
    std::array<std::uint8_t, 10> bytes{};
    for (std::uint8_t& byte : bytes) byte = static_cast<std::uint8_t>(random_.below(256));
    return uuid_v7(1'790'000'000'000 + ++count_, bytes);
  }

 private:
  RandomStream random_;
  std::int64_t count_ = 0;
};

inline Day day(std::string_view text) {
  return day_from_text(text).value();
}

class Workplace {
 public:
  /// Ready to work, in the early morning of 27 October 2026.
  explicit Workplace(std::uint64_t seed = 1) : ids(seed) {
    clock.set(day("2026-10-27"));
    business = ready_business(ports(), "tablet").value();
  }

  Ports ports() { return {store, directory, clock, ids}; }

  Herd herd(std::string_view name = "Thornby Hollow") {
    const auto known = find_herd(store, name);
    return known ? known.value() : register_herd(ports(), name).value();
  }

  Visit start(std::string_view on = "2026-10-27", FootSet feet = four_feet) {
    VisitWanted wanted;
    wanted.herd = herd().herd;
    wanted.day = day(on);
    wanted.todays_feet = feet;
    return start_visit(ports(), wanted).value();
  }

  Recording record(const Visit& visit) {
    return Recording::open(ports(), visit, english()).value();
  }

  /// A whole earlier visit, recorded and ended.
  VisitEnded visited(std::string_view on, const std::vector<std::string>& lines) {
    const Visit visit = start(on);
    Recording recording = record(visit);
    (void)recording.say_all(lines).value();
    (void)recording.end_of_visit().value();
    return end_visit(ports(), visit, english()).value();
  }

  MemoryStore store;
  MemoryDirectory directory;
  SteppingClock clock;
  SeededIds ids;
  Business business;
};

/// The answers as lines, without entry ids.
inline std::vector<std::string> lines_of(const std::vector<ReplyItem>& items) {
  std::vector<std::string> lines;
  for (ReplyItem item : items) {
    item.entry.reset();
    lines.push_back(to_line(item));
  }
  return lines;
}

}  // namespace evenclaw::test
