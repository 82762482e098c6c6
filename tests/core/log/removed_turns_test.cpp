#include "core/log/removed_turns.hpp"

#include <doctest/doctest.h>

#include <algorithm>

#include "core/log/merge.hpp"
#include "tests/core/log/farm.hpp"

namespace evenclaw {

TEST_CASE("a turn that was taken away still shows, with the day and the reason") {
  Farm farm;
  farm.set_clock("2026-11-24T08:00:00.000+01:00");
  const EntryId kept = farm.turn(cow_named("412"), "2026-11-24", {nothing_found(Foot::lh)});
  const EntryId turn = farm.turn(cow_named("413"), "2026-11-24", {nothing_found(Foot::lh)});
  farm.set_clock("2026-11-30T08:00:00.000+01:00");
  farm.redact(farm.entry(turn));
  const auto removed = removed_turns(farm.entries());
  REQUIRE(removed.size() == 1);
  CHECK(removed[0].turn == turn);
  CHECK(removed[0].turn != kept);
  CHECK(removed[0].removed_on == day("2026-11-30"));
  CHECK(removed[0].why == "asked to");
  const std::vector<Uuid>& subjects = removed[0].subjects;
  CHECK(std::count(subjects.begin(), subjects.end(), cow_named("413").value) == 1);
}

TEST_CASE("a body that is gone without its redaction is known to be gone and no more") {
  Farm farm;
  const EntryId turn = farm.turn(cow_named("412"), "2026-11-24", {nothing_found(Foot::lh)});
  Entry blank = farm.entry(turn);
  blank.body.reset();
  const std::vector<Entry> entries = {blank};
  const auto removed = removed_turns(entries);
  REQUIRE(removed.size() == 1);
  CHECK_FALSE(removed[0].removed_on);
  CHECK(removed[0].why.empty());
}

TEST_CASE("a wrong turn that was taken away behind its correction is not missed") {
  Farm farm;
  const CowId cow = cow_named("412");
  const EntryId wrong = farm.turn(cow, "2026-11-24", {nothing_found(Foot::lh)});
  const EntryId right =
      farm.correct(farm.entry(wrong), farm.turn_body(cow, "2026-11-24", {nothing_found(Foot::rh)}));
  farm.redact(farm.entry(wrong));
  CHECK(removed_turns(farm.entries()).empty());
  farm.redact(farm.entry(right));
  const auto removed = removed_turns(farm.entries());
  REQUIRE(removed.size() == 1);
  CHECK(removed[0].turn == right);
}

TEST_CASE("taken away twice, it was gone from the first time on, in whatever order they arrive") {
  Farm farm;
  const EntryId turn = farm.turn(cow_named("412"), "2026-11-24", {nothing_found(Foot::lh)});
  farm.set_clock("2026-11-26T08:00:00.000+01:00");
  farm.redact(farm.entry(turn));
  farm.set_clock("2026-11-30T08:00:00.000+01:00");
  farm.redact(farm.entry(turn));
  std::vector<Entry> entries = farm.entries();
  CHECK(removed_turns(entries).at(0).removed_on == day("2026-11-26"));
  std::reverse(entries.begin(), entries.end());
  CHECK(removed_turns(entries).at(0).removed_on == day("2026-11-26"));
}

}  // namespace evenclaw
