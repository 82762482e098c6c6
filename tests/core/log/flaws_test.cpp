#include <doctest/doctest.h>

#include "core/log/body.hpp"
#include "core/log/merge.hpp"
#include "tests/core/log/farm.hpp"

namespace evenclaw {

namespace {

Farm farm_with_turns(int turns) {
  Farm farm;
  for (int i = 0; i < turns; ++i) farm.turn(cow_named("412"), "2026-11-24", {});
  return farm;
}

}  // namespace

TEST_CASE("a sound log has no flaws") {
  Farm farm = farm_with_turns(3);
  farm.write_on("other tablet");
  farm.turn(cow_named("413"), "2026-11-24", {});
  CHECK(flaws_of(farm.entries()).empty());
  CHECK(flaws_of({}).empty());
}

TEST_CASE("a hole in a device's count is one gap, named by its first missing seq") {
  std::vector<Entry> entries = farm_with_turns(5).entries();
  entries.erase(entries.begin() + 2, entries.begin() + 4);
  const std::vector<LogFlaw> flaws = flaws_of(entries);
  REQUIRE(flaws.size() == 1);
  CHECK(flaws[0] == LogFlaw{LogFlaw::Kind::gap, named_id("herd"), device_named("tablet"), 3, {}});
}

TEST_CASE("a log that begins late has a gap at its start") {
  std::vector<Entry> entries = farm_with_turns(2).entries();
  entries.erase(entries.begin());
  const std::vector<LogFlaw> flaws = flaws_of(entries);
  REQUIRE(flaws.size() == 1);
  CHECK(flaws[0].seq == 1);
}

TEST_CASE("one seq used by two entries is flagged, two versions of one entry are not") {
  std::vector<Entry> entries = farm_with_turns(2).entries();
  entries.push_back(make_entry(entries.back().envelope, "{}"));
  CHECK(flaws_of(entries).empty());
  entries.back().envelope.id = EntryId{named_id("a copied device")};
  const std::vector<LogFlaw> flaws = flaws_of(entries);
  REQUIRE(flaws.size() == 1);
  CHECK(flaws[0].kind == LogFlaw::Kind::seq_used_twice);
  CHECK(flaws[0].seq == entries.back().envelope.seq);
}

TEST_CASE("an order far ahead of all others is flagged, what comes after it in the order too") {
  std::vector<Entry> entries = farm_with_turns(4).entries();
  entries[3].envelope.order = entries[2].envelope.order + largest_order_jump;
  CHECK(flaws_of(entries).empty());
  entries[3].envelope.order += 1;
  entries[4].envelope.order = entries[3].envelope.order + 1;
  const std::vector<LogFlaw> flaws = flaws_of(entries);
  REQUIRE(flaws.size() == 2);
  CHECK(flaws[0].kind == LogFlaw::Kind::order_jump);
  CHECK(flaws[0].entry == entries[3].envelope.id);
  CHECK(flaws[1].entry == entries[4].envelope.id);
}

TEST_CASE("corrections in a ring and corrections that do not fit are flagged") {
  Farm farm = farm_with_turns(1);
  const TurnRecorded body = farm.turn_body(cow_named("412"), "2026-11-24", {});
  Envelope own = farm.next_envelope();
  own.supersedes = own.id;
  farm.keep(entry_of(own, body));
  const EntryId other_kind = farm.correct(farm.entries()[1], VisitClosed{body.visit, {}});
  const std::vector<LogFlaw> flaws = flaws_of(farm.entries());
  REQUIRE(flaws.size() == 2);
  CHECK(flaws[0].kind == LogFlaw::Kind::supersedes_cycle);
  CHECK(flaws[0].entry == own.id);
  CHECK(flaws[1].kind == LogFlaw::Kind::supersedes_other_kind);
  CHECK(flaws[1].entry == other_kind);
}

}  // namespace evenclaw
