#include "core/api/journal.hpp"

#include <doctest/doctest.h>

#include "core/log/bodies.hpp"
#include "tests/core/api/workplace.hpp"

namespace evenclaw::test {

namespace {

std::vector<Entry> settings_in(Workplace& place) {
  std::vector<Entry> entries;
  (void)place.store.read_entries({{}, {}, {std::string(Setting::kind)}}, [&](const Entry& entry) {
    entries.push_back(entry);
    return true;
  });
  return entries;
}

}  // namespace

TEST_CASE("what was added is on record when it is written, all of it together and not before") {
  Workplace place;
  auto journal = Journal::open(place.ports(), place.business.business.value).value();
  for (const char* value : {"a", "b", "c"}) {
    REQUIRE(journal.add(Setting{"colour", value}, {journal.fresh_id()}).ok());
  }
  CHECK(settings_in(place).empty());
  CHECK(journal.unwritten().size() == 3);
  CHECK(journal.write().value().size() == 3);
  CHECK(journal.unwritten().empty());
  CHECK(settings_in(place).size() == 3);
}

TEST_CASE("the entries of a device are counted without gaps, by whichever journal they came") {
  Workplace place;
  const Uuid scope = place.business.business.value;
  for (int round = 0; round < 2; ++round) {
    auto journal = Journal::open(place.ports(), scope).value();
    REQUIRE(journal.add(Setting{"colour", "a"}, {journal.fresh_id()}).ok());
    REQUIRE(journal.add(Setting{"colour", "b"}, {journal.fresh_id()}).ok());
    REQUIRE(journal.write().ok());
  }
  const std::vector<Entry> entries = settings_in(place);
  REQUIRE(entries.size() == 4);
  for (std::size_t at = 1; at < entries.size(); ++at) {
    CHECK(entries[at].envelope.seq == entries[at - 1].envelope.seq + 1);
    CHECK(entries[at].envelope.order > entries[at - 1].envelope.order);
    CHECK(entries[at].envelope.device == place.business.device);
  }
}

TEST_CASE("a store whose device has no name yet takes nothing") {
  Workplace place;
  MemoryStore fresh;
  const Ports ports{fresh, place.directory, place.clock, place.ids};
  const auto journal = Journal::open(ports, place.business.business.value);
  REQUIRE_FALSE(journal.ok());
  CHECK(journal.faults().front().slug == "usage");
}

}  // namespace evenclaw::test
