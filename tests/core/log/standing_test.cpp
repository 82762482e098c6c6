#include "core/log/standing.hpp"

#include <doctest/doctest.h>

#include "tests/core/log/farm.hpp"

namespace evenclaw {

TEST_CASE("a correction stands where the entry stood that it leads back to") {
  Farm farm;
  const TurnRecorded body = farm.turn_body(cow_named("412"), "2026-11-24", {});
  const EntryId wrong = farm.write(body);
  const EntryId after = farm.turn(cow_named("413"), "2026-11-24", {});
  const EntryId better = farm.correct(farm.entry(wrong), body);
  const EntryId best = farm.correct(farm.entry(better), body);
  const Standing standing = standing_among(farm.entries());
  REQUIRE(standing.entries.size() == 3);  // the opening of the visit and two turns
  CHECK(standing.entries[1]->envelope.id == best);
  CHECK(standing.entries[2]->envelope.id == after);
}

TEST_CASE("a correction whose first entry never came stands where it was made itself") {
  Farm farm;
  const TurnRecorded body = farm.turn_body(cow_named("412"), "2026-11-24", {});
  const EntryId before = farm.turn(cow_named("413"), "2026-11-24", {});
  Envelope envelope = farm.next_envelope();
  envelope.supersedes = EntryId{named_id("never came")};
  const EntryId correction = farm.keep(entry_of(envelope, body));
  const Standing standing = standing_among(farm.entries());
  REQUIRE(standing.entries.size() == 3);
  CHECK(standing.entries[1]->envelope.id == before);
  CHECK(standing.entries[2]->envelope.id == correction);
}

}  // namespace evenclaw
