// The whole log given out and taken into a store that is empty: the same records again.
#include <doctest/doctest.h>

#include <algorithm>
#include <memory>

#include "core/api/herd_import.hpp"
#include "core/api/transfer.hpp"
#include "core/base/random.hpp"
#include "core/log/bodies.hpp"
#include "core/log/selection.hpp"
#include "tests/core/api/workplace.hpp"

namespace evenclaw::test {

namespace {

std::vector<std::string> log_of(Store& store) {
  std::vector<std::string> lines;
  (void)give_out(store, [&](std::string_view line) -> Outcome {
    lines.emplace_back(line);
    return Done{};
  }).value();
  return lines;
}

LineSource lines_one_by_one(std::vector<std::string> lines) {
  auto left = std::make_shared<std::vector<std::string>>(std::move(lines));
  auto next = std::make_shared<std::size_t>(0);
  return [=]() -> Result<std::optional<std::string>> {
    if (*next == left->size()) return std::optional<std::string>();
    return std::optional((*left)[(*next)++]);
  };
}

std::vector<Cells> picture_of(Store& store) {
  std::vector<Cells> all;
  for (const TableShape& shape : all_tables()) {
    const auto rows = store.select({std::string(shape.name), {}, {}, {}});
    REQUIRE(rows.ok());
    all.insert(all.end(), rows->begin(), rows->end());
  }
  return all;
}

/// A season of a herd, called as it may be.
void record_any_season(Workplace& place, RandomStream& random) {
  const auto number = [&] { return std::to_string(410 + random.below(6)); };
  for (int month = 5; month <= 9; ++month) {
    std::vector<std::string> lines;
    const std::uint32_t cows = 1 + random.below(4);
    for (std::uint32_t i = 0; i < cows; ++i) {
      lines.push_back(number() + (random.chance(0.3) ? " lame LH" : ""));
      constexpr const char* calls[] = {"LH outside sole ulcer, bad; block on inside; see again 28d",
                                       "RH DD M2 behind; spray; wrap on, off 3d",
                                       "LH outside white line abscess heel; opened",
                                       "rest fine",
                                       "wrap off LH",
                                       "no, RH"};
      const std::uint32_t said = random.below(4);
      for (std::uint32_t j = 0; j < said; ++j) lines.emplace_back(calls[random.below(6)]);
    }
    if (random.chance(0.5)) lines.push_back("news " + number() + " wrap off");
    if (random.chance(0.2)) lines.push_back(number() + " gone");
    lines.emplace_back("done");
    (void)place.visited("2026-0" + std::to_string(month) + "-1" + std::to_string(random.below(9)),
                        lines);
  }
  ImportWish wish;
  wish.from = day("2026-10-02");
  (void)import_herd(place.ports(), place.herd().herd,
                    "number;calved;lactation;left\n" + number() + ";2025-11-02;2;\n" + number() +
                        ";;;2026-10-01\n",
                    wish);
}

struct EmptyDevice {
  MemoryStore store;
  MemoryDirectory directory;
  SteppingClock clock;
  SeededIds ids{77};

  Ports ports() { return {store, directory, clock, ids}; }

  TakenIn take(const std::vector<std::string>& lines) {
    const auto business = business_of_line(lines.front());
    REQUIRE(business.has_value());
    REQUIRE(ready_business(ports(), "another", business).ok());
    return take_in(ports(), lines_one_by_one(lines)).value();
  }
};

/// An entry of a kind that may be corrected, with what it corrects.
Entry correction(const Workplace& place, const Herd& herd, std::string_view name,
                 std::string_view corrects) {
  Envelope envelope;
  envelope.business = place.business.business;
  envelope.scope = herd.herd.value;
  envelope.subjects = {herd.herd.value};
  envelope.id = EntryId{uuid_derived(name)};
  envelope.device = DeviceId{uuid_derived("another device")};
  envelope.seq = static_cast<std::int64_t>(name.size());
  envelope.order = envelope.seq;
  envelope.kind = "kind_of_tomorrow";
  if (!corrects.empty()) envelope.supersedes = EntryId{uuid_derived(corrects)};
  return make_entry(envelope, "{}");
}

}  // namespace

TEST_CASE("a log taken into an empty store, in any order, gives the same picture") {
  for (std::uint64_t seed = 0; seed < 25; ++seed) {
    CAPTURE(seed);
    RandomStream random(20261107, seed);
    Workplace place(seed + 1);
    record_any_season(place, random);
    std::vector<std::string> lines = log_of(place.store);
    for (std::size_t at = lines.size(); at > 1; --at) {
      std::swap(lines[at - 1], lines[random.below(static_cast<std::uint32_t>(at))]);
    }
    EmptyDevice device;
    const TakenIn taken = device.take(lines);
    CHECK(taken.stored == static_cast<std::int64_t>(lines.size()));
    CHECK(taken.set_aside == 0);
    CHECK(taken.newer == 0);
    CHECK(picture_of(device.store) == picture_of(place.store));
  }
}

TEST_CASE("corrections that go round in a ring are refused where it closes, the others come in") {
  Workplace place;
  const Herd herd = place.herd();
  const std::vector<std::string> lines = {entry_line(correction(place, herd, "a", "ccc")),
                                          entry_line(correction(place, herd, "bb", "a")),
                                          entry_line(correction(place, herd, "ccc", "bb")),
                                          entry_line(correction(place, herd, "dddd", "a"))};
  EmptyDevice device;
  const TakenIn taken = device.take(lines);
  CHECK(taken.stored == 3);
  CHECK(taken.set_aside == 1);
  REQUIRE(taken.reasons.size() == 1);
  CHECK(taken.reasons[0].line == 3);
  CHECK(taken.reasons[0].reason.find("ring") != std::string::npos);
  CHECK_FALSE(taken.reasons[0].remedy.empty());
  // In two parts it is seen as well, for what came before is here.
  EmptyDevice later;
  (void)later.take({lines[0], lines[1]});
  CHECK(take_in(later.ports(), lines_one_by_one({lines[2]})).value().set_aside == 1);
}

TEST_CASE("an entry that corrects itself is a ring of one") {
  Workplace place;
  EmptyDevice device;
  CHECK(device.take({entry_line(correction(place, place.herd(), "a", "a"))}).set_aside == 1);
}

TEST_CASE("what a newer version wrote is kept, counted, and given out again") {
  Workplace place;
  const std::string line = entry_line(correction(place, place.herd(), "a", ""));
  EmptyDevice device;
  const TakenIn taken = device.take({line});
  CHECK(taken.stored == 1);
  CHECK(taken.newer == 1);
  const std::vector<std::string> again = log_of(device.store);
  CHECK(std::find(again.begin(), again.end(), line) != again.end());
}

TEST_CASE("a line that is cut off is told with its line, its place in it and what to do") {
  Workplace place;
  (void)place.herd();
  const std::vector<std::string> lines = log_of(place.store);
  EmptyDevice device;
  const TakenIn taken = device.take({lines[0], lines[1].substr(0, lines[1].size() - 9)});
  CHECK(taken.stored == 1);
  REQUIRE(taken.reasons.size() == 1);
  CHECK(taken.reasons[0].line == 2);
  CHECK_FALSE(taken.reasons[0].remedy.empty());
}

}  // namespace evenclaw::test
