#include <doctest/doctest.h>

#include <cstdlib>
#include <string>
#include <utility>
#include <vector>

#include "core/base/random.hpp"
#include "core/log/merge.hpp"
#include "tests/core/log/history.hpp"
#include "tests/core/log/replica.hpp"

namespace evenclaw {

namespace {

// EVENCLAW_HISTORIES says how many; EVENCLAW_SEED replays the one that failed.
std::uint64_t number_from(const char* variable, std::uint64_t otherwise) {
  const char* text = std::getenv(variable);
  return text == nullptr ? otherwise : std::strtoull(text, nullptr, 10);
}

std::vector<std::uint64_t> seeds_to_try() {
#ifdef __EMSCRIPTEN__
  constexpr std::uint64_t usual = 100;
#else
  constexpr std::uint64_t usual = 2000;
#endif
  if (std::getenv("EVENCLAW_SEED") != nullptr) return {number_from("EVENCLAW_SEED", 0)};
  const std::uint64_t count = number_from("EVENCLAW_HISTORIES", usual);
  std::vector<std::uint64_t> seeds(static_cast<std::size_t>(count));
  for (std::size_t i = 0; i < seeds.size(); ++i) seeds[i] = i + 1;
  return seeds;
}

History history_of(std::uint64_t seed) {
  const int length = 12 + static_cast<int>(RandomStream(seed, 1).below(16));
  return make_history(seed, length);
}

void shuffle(std::vector<Entry>& entries, RandomStream& random) {
  for (std::size_t left = entries.size(); left > 1; --left) {
    std::swap(entries[left - 1], entries[random.below(static_cast<std::uint32_t>(left))]);
  }
}

EntrySet united(EntrySet a, const EntrySet& b) {
  a.add_all(b);
  return a;
}

/// Some of a set with their bodies taken away, as another device may hold them.
EntrySet any_part(const History& history, RandomStream& random) {
  EntrySet part;
  for (Entry entry : history.entries) {
    if (!random.chance(0.6)) continue;
    if (random.chance(0.1)) entry.body.reset();
    part.add(std::move(entry));
  }
  return part;
}

void deliver(Replica& replica, std::vector<Entry> entries, RandomStream& random) {
  shuffle(entries, random);
  for (std::size_t at = 0; at < entries.size();) {
    const std::size_t left = entries.size() - at;
    const std::size_t count = std::min<std::size_t>(left, 1 + random.below(12));
    replica.receive(std::span(entries).subspan(at, count));
    at += count;
  }
}

}  // namespace

TEST_CASE("merging logs is commutative, associative and idempotent on every history") {
  for (const std::uint64_t seed : seeds_to_try()) {
    CAPTURE(seed);
    const History history = history_of(seed);
    RandomStream random(seed, 2);
    const EntrySet a = any_part(history, random);
    const EntrySet b = any_part(history, random);
    const EntrySet c = any_part(history, random);
    const EntrySet both = united(a, b);
    REQUIRE(united(b, a) == both);
    REQUIRE(united(both, c) == united(a, united(b, c)));
    REQUIRE(united(both, a) == both);
  }
}

TEST_CASE("pictures kept up to date equal those made from nothing, whatever arrives when") {
  for (const std::uint64_t seed : seeds_to_try()) {
    CAPTURE(seed);
    const History history = history_of(seed);
    RandomStream random(seed, 3);
    Replica one(history.herd);
    deliver(one, history.entries, random);
    REQUIRE(one.pictures() == one.rebuilt());
    Replica other(history.herd);
    std::vector<Entry> all_at_once = history.entries;
    shuffle(all_at_once, random);
    other.receive(all_at_once);
    REQUIRE(other.pictures() == one.pictures());
  }
}

}  // namespace evenclaw
