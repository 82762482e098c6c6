#include "core/api/transfer.hpp"

#include <doctest/doctest.h>

#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "tests/core/api/workplace.hpp"
#include "tests/store/sample_entries.hpp"

namespace evenclaw::test {

namespace {

const HerdId other_herd = sample_herd(1);

LineSource source_of(std::vector<std::string> lines, bool breaks_at_the_end = false) {
  auto left = std::make_shared<std::vector<std::string>>(std::move(lines));
  auto next = std::make_shared<std::size_t>(0);
  return [=]() -> Result<std::optional<std::string>> {
    if (*next < left->size()) return std::optional((*left)[(*next)++]);
    if (!breaks_at_the_end) return std::optional<std::string>();
    return Fault{.slug = "disk-failed", .message = "the stick was pulled out"};
  };
}

/// As written by another device of this business.
std::string line_of(const Workplace& place, std::int64_t number) {
  Entry entry = sample_entry(number, sample_device(1), other_herd);
  entry.envelope.business = place.business.business;
  return entry_line(entry);
}

std::string line_of_strangers(std::int64_t number) {
  return entry_line(sample_entry(number, sample_device(2), other_herd));
}

std::int64_t entries_in(Workplace& place) {
  std::int64_t count = 0;
  (void)place.store.read_entries({other_herd.value, {}, {}}, [&](const Entry&) {
    ++count;
    return true;
  });
  return count;
}

using Lines = std::vector<std::string>;

}  // namespace

TEST_CASE("one bad line is set aside with its place, and the lines behind it come in") {
  Workplace place;
  const auto taken =
      take_in(place.ports(),
              source_of({line_of(place, 1), "{\"no\":\"entry\"}", line_of(place, 2)}))
          .value();
  CHECK(taken.stored == 2);
  CHECK(taken.set_aside == 1);
  REQUIRE(taken.reasons.size() == 1);
  CHECK(taken.reasons.front().line == 2);
  CHECK(entries_in(place) == 2);
}

TEST_CASE("of very many bad lines all are counted and the first hundred are told") {
  Workplace place;
  const auto taken = take_in(place.ports(), source_of(Lines(250, "torn"))).value();
  CHECK(taken.set_aside == 250);
  CHECK(taken.reasons.size() == 100);
}

TEST_CASE("the entries of another business are set aside, and one reason stands for all") {
  Workplace place;
  const auto taken =
      take_in(place.ports(),
              source_of({line_of_strangers(1), line_of_strangers(2), line_of(place, 3)}))
          .value();
  CHECK(taken.stored == 1);
  CHECK(taken.set_aside == 2);
  CHECK(taken.other_business == 2);
  CHECK(taken.reasons.size() == 1);
}

TEST_CASE("a log longer than one write comes in whole, and once more changes nothing") {
  Workplace place;
  Lines lines;
  for (std::int64_t number = 1; number <= 2001; ++number) lines.push_back(line_of(place, number));
  CHECK(take_in(place.ports(), source_of(lines)).value().stored == 2001);
  CHECK(take_in(place.ports(), source_of(lines)).value().already == 2001);
  CHECK(entries_in(place) == 2001);
}

TEST_CASE(
    "a log that breaks off is told, its rows are known to be missing, and it can come again") {
  Workplace place;
  Lines lines;
  for (std::int64_t number = 1; number <= 1500; ++number) lines.push_back(line_of(place, number));
  const auto broken = take_in(place.ports(), source_of(lines, true));
  REQUIRE_FALSE(broken.ok());
  CHECK(broken.faults().front().slug == "disk-failed");
  CHECK(entries_in(place) == 1000);
  CHECK(place.store.needs_rebuild().value());
  CHECK(take_in(place.ports(), source_of(lines)).value().stored == 500);
  REQUIRE(rebuild_picture(place.store, {}).ok());
  CHECK_FALSE(place.store.needs_rebuild().value());
}

TEST_CASE("giving out stops where nothing more can be written, and says why") {
  Workplace place;
  REQUIRE(take_in(place.ports(), source_of({line_of(place, 1), line_of(place, 2)})).ok());
  int written = 0;
  const auto given = give_out(place.store, [&](std::string_view) -> Outcome {
    if (++written > 1) return Fault{.slug = "disk-failed", .message = "no room"};
    return Done{};
  });
  REQUIRE_FALSE(given.ok());
  CHECK(given.faults().front().slug == "disk-failed");
  CHECK(written == 2);
}

TEST_CASE("what was given out, taken in by a copy of the business, is given out alike") {
  Workplace place;
  REQUIRE(take_in(place.ports(), source_of({line_of(place, 1), line_of(place, 2)})).ok());
  const auto lines_of = [](Store& store) {
    Lines lines;
    (void)give_out(store, [&](std::string_view line) -> Outcome {
      lines.emplace_back(line);
      return Done{};
    }).value();
    return lines;
  };
  const Lines lines = lines_of(place.store);
  CHECK(lines.size() > 2);
  MemoryStore copy;
  REQUIRE(copy.set_identity(place.business.business, sample_device(9)).ok());
  const Ports ports{copy, place.directory, place.clock, place.ids};
  CHECK(take_in(ports, source_of(lines)).value().stored == static_cast<std::int64_t>(lines.size()));
  CHECK(lines_of(copy) == lines);
}

}  // namespace evenclaw::test
