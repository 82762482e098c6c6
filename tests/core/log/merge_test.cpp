#include "core/log/merge.hpp"

#include <doctest/doctest.h>

#include "core/log/body.hpp"
#include "tests/core/log/counting.hpp"
#include "tests/core/log/farm.hpp"

namespace evenclaw {

namespace {

std::vector<EntryId> ids_of(const std::vector<Entry>& entries) {
  std::vector<EntryId> ids;
  ids.reserve(entries.size());
  for (const Entry& entry : entries) ids.push_back(entry.envelope.id);
  return ids;
}

Entry without_body(Entry entry) {
  entry.body.reset();
  return entry;
}

}  // namespace

TEST_CASE("an entry that comes twice is kept once") {
  Farm farm;
  farm.turn(cow_named("412"), "2026-11-24", {});
  EntrySet set;
  CHECK(set.add(farm.last()) == Kept::stored);
  CHECK(set.add(farm.last()) == Kept::already);
  CHECK(set.size() == 1);
}

TEST_CASE("redacted beats full, whichever comes first") {
  Farm farm;
  farm.turn(cow_named("412"), "2026-11-24", {});
  EntrySet full_first;
  full_first.add(farm.last());
  CHECK(full_first.add(without_body(farm.last())) == Kept::redacted_now);
  EntrySet redacted_first;
  redacted_first.add(without_body(farm.last()));
  CHECK(redacted_first.add(farm.last()) == Kept::already);
  CHECK(full_first == redacted_first);
  CHECK_FALSE(full_first.shown().front().body);
}

TEST_CASE("a redact entry takes the body out of the set, whichever comes first") {
  Farm farm;
  farm.turn(cow_named("412"), "2026-11-24", {});
  const Entry turn = farm.last();
  farm.redact(turn);
  const Entry redact = farm.last();
  EntrySet turn_first;
  turn_first.add(turn);
  turn_first.add(redact);
  EntrySet redact_first;
  redact_first.add(redact);
  CHECK(redact_first.add(turn) == Kept::stored);
  CHECK(turn_first == redact_first);
  CHECK(digest_of(turn_first.shown().front()) == digest_of(turn));
  CHECK_FALSE(turn_first.shown().front().body);
}

TEST_CASE("what a redact entry took away does not come back, not even by redacting that entry") {
  Farm farm;
  farm.turn(cow_named("412"), "2026-11-24", {});
  const Entry turn = farm.last();
  farm.redact(turn);
  const Entry redact = farm.last();
  farm.redact(redact);
  EntrySet set;
  set.add(without_body(redact));
  set.add(farm.last());
  set.add(redact);
  set.add(turn);
  for (const Entry& entry : set.everything()) {
    CHECK(entry.body.has_value() == (entry.envelope.id != turn.envelope.id));
  }
}

TEST_CASE("the same id with other bytes keeps both, shows the lowest digest and is flagged") {
  Farm farm;
  farm.turn(cow_named("412"), "2026-11-24", {});
  const Entry one = farm.last();
  const Entry other = make_entry(one.envelope, "{}");
  EntrySet set;
  set.add(one);
  CHECK(set.in_two_versions().empty());
  CHECK(set.add(other) == Kept::two_versions);
  CHECK(set.size() == 2);
  CHECK(set.everything().size() == 2);
  REQUIRE(set.shown().size() == 1);
  CHECK(digest_of(set.shown().front()) == std::min(digest_of(one), digest_of(other)));
  CHECK(set.in_two_versions() == std::vector<EntryId>{one.envelope.id});
}

TEST_CASE("an id is its own in every scope") {
  Farm farm;
  farm.turn(cow_named("412"), "2026-11-24", {});
  Entry elsewhere = farm.last();
  elsewhere.envelope.scope = named_id("another herd");
  EntrySet set;
  set.add(farm.last());
  CHECK(set.add(elsewhere) == Kept::stored);
  CHECK(set.in_two_versions().empty());
}

TEST_CASE("a correction takes the place of what it corrects") {
  Farm farm;
  const EntryId wrong = farm.turn(cow_named("412"), "2026-11-24", {});
  const EntryId right =
      farm.correct(farm.entry(wrong), farm.turn_body(cow_named("421"), "2026-11-24", {}));
  const std::vector<EntryId> counting = ids_of(counting_among(farm.entries()));
  CHECK(std::count(counting.begin(), counting.end(), wrong) == 0);
  CHECK(std::count(counting.begin(), counting.end(), right) == 1);
}

TEST_CASE("of two corrections of one entry the later in the total order counts") {
  Farm farm;
  const EntryId wrong = farm.turn(cow_named("412"), "2026-11-24", {});
  const TurnRecorded body = farm.turn_body(cow_named("412"), "2026-11-24", {});
  const EntryId first = farm.correct(farm.entry(wrong), body);
  const EntryId second = farm.correct(farm.entry(wrong), body);
  std::vector<Entry> entries = farm.entries();
  std::reverse(entries.begin(), entries.end());
  const std::vector<EntryId> counting = ids_of(counting_among(entries));
  CHECK(std::count(counting.begin(), counting.end(), first) == 0);
  CHECK(std::count(counting.begin(), counting.end(), second) == 1);
}

TEST_CASE("a chain of corrections ends in its last") {
  Farm farm;
  const TurnRecorded body = farm.turn_body(cow_named("412"), "2026-11-24", {});
  EntryId last = farm.write(body);
  for (int i = 0; i < 5; ++i) last = farm.correct(farm.entry(last), body);
  const std::vector<Entry> counting = counting_among(farm.entries());
  REQUIRE(counting.size() == 2);  // the opening of the visit and one turn
  CHECK(counting.back().envelope.id == last);
}

TEST_CASE("corrections of another kind, elsewhere, or of a cow they do not name do not count") {
  Farm farm;
  const EntryId turn = farm.turn(cow_named("412"), "2026-11-24", {});
  const auto still_counts = [&] {
    const std::vector<EntryId> counting = ids_of(counting_among(farm.entries()));
    return std::count(counting.begin(), counting.end(), turn) == 1;
  };
  farm.correct(farm.entry(turn), CowRegistered{cow_named("412"), "412", day("2026-11-24")});
  CHECK(still_counts());

  Envelope elsewhere = farm.next_envelope();
  elsewhere.scope = named_id("another herd");
  elsewhere.supersedes = turn;
  farm.keep(entry_of(elsewhere, farm.turn_body(cow_named("412"), "2026-11-24", {})));
  CHECK(still_counts());

  Envelope nameless = farm.next_envelope();
  nameless.supersedes = turn;
  farm.keep(entry_of(nameless, farm.turn_body(cow_named("421"), "2026-11-24", {})));
  CHECK(still_counts());

  farm.correct(farm.entry(turn), farm.turn_body(cow_named("421"), "2026-11-24", {}));
  CHECK_FALSE(still_counts());
}

TEST_CASE("in a ring of corrections none of them counts as one") {
  Farm farm;
  const TurnRecorded body = farm.turn_body(cow_named("412"), "2026-11-24", {});
  Envelope one = farm.next_envelope();
  Envelope other = farm.next_envelope();
  other.seq += 1;
  one.supersedes = other.id;
  other.supersedes = one.id;
  farm.keep(entry_of(one, body));
  farm.keep(entry_of(other, body));
  CHECK(counting_among(farm.entries()).size() == 3);
}

TEST_CASE("redacting a correction brings the words it corrected not back") {
  Farm farm;
  const EntryId wrong = farm.turn(cow_named("412"), "2026-11-24", {});
  const TurnRecorded body = farm.turn_body(cow_named("412"), "2026-11-24", {});
  const EntryId correction = farm.correct(farm.entry(wrong), body);
  farm.redact(farm.entry(correction));
  const std::vector<EntryId> counting = ids_of(counting_among(farm.entries()));
  CHECK(std::count(counting.begin(), counting.end(), wrong) == 0);
  CHECK(std::count(counting.begin(), counting.end(), correction) == 0);
}

TEST_CASE("what counts comes in the total order of each scope, each entry once") {
  Farm farm;
  for (int i = 0; i < 4; ++i) farm.turn(cow_named("412"), "2026-11-24", {});
  std::vector<Entry> entries = farm.entries();
  entries.insert(entries.end(), farm.entries().rbegin(), farm.entries().rend());
  CHECK(counting_among(entries) == farm.entries());
}

}  // namespace evenclaw
