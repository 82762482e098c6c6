#include <doctest/doctest.h>

#include <algorithm>

#include "core/log/picture.hpp"
#include "tests/core/log/farm.hpp"

namespace evenclaw {

namespace {

const CowId a = cow_named("a");
const CowId b = cow_named("b");
const CowId c = cow_named("c");

std::vector<CowId> sorted(std::vector<CowId> cows) {
  std::sort(cows.begin(), cows.end());
  return cows;
}

EntryId take_back(Farm& farm, EntryId same) {
  Envelope envelope = farm.next_envelope();
  envelope.subjects = farm.entry(same).envelope.subjects;
  return farm.keep(entry_of(envelope, SameCowTakenBack{same}));
}

}  // namespace

TEST_CASE("a cow nobody united stands alone") {
  const CowGroups groups({});
  CHECK(groups.representative(a) == a);
  CHECK(groups.group_of(a) == std::vector<CowId>{a});
}

TEST_CASE("cows united in a chain are one group under the smallest id") {
  Farm farm;
  farm.write(SameCow{a, b});
  farm.write(SameCow{c, b});
  const CowGroups groups(farm.entries());
  const std::vector<CowId> all = sorted({a, b, c});
  for (const CowId cow : all) {
    CHECK(groups.group_of(cow) == all);
    CHECK(groups.representative(cow) == all.front());
  }
}

TEST_CASE("what is taken back parts them, whichever came first") {
  Farm farm;
  const EntryId same = farm.write(SameCow{a, b});
  farm.write(SameCow{b, c});
  take_back(farm, same);
  std::vector<Entry> entries = farm.entries();
  for (int i = 0; i < 2; ++i) {
    const CowGroups groups(entries);
    CHECK(groups.group_of(a) == std::vector<CowId>{a});
    CHECK(groups.group_of(b) == sorted({b, c}));
    std::reverse(entries.begin(), entries.end());
  }
}

TEST_CASE("united again after it was taken back they are one") {
  Farm farm;
  take_back(farm, farm.write(SameCow{a, b}));
  farm.write(SameCow{a, b});
  CHECK(CowGroups(farm.entries()).group_of(a) == sorted({a, b}));
}

TEST_CASE("a redacted union unites nobody") {
  Farm farm;
  farm.write(SameCow{a, b});
  farm.redact(farm.last());
  CHECK(CowGroups(farm.entries()).group_of(a) == std::vector<CowId>{a});
}

TEST_CASE("a union whose envelope does not name both cows unites nobody") {
  Farm farm;
  farm.keep(make_entry(entry_of(farm.next_envelope(), SameCow{a, c}).envelope,
                       body_bytes(SameCow{a, b})));
  CHECK(CowGroups(farm.entries()).group_of(a) == std::vector<CowId>{a});
}

TEST_CASE("a cow united with herself is one cow") {
  Farm farm;
  farm.write(SameCow{a, a});
  CHECK(CowGroups(farm.entries()).group_of(a) == std::vector<CowId>{a});
}

TEST_CASE("an entry that counts as another kind in its other version unites nobody") {
  Farm farm;
  farm.write(SameCow{a, b});
  const Entry same = farm.last();
  Entry other = same;
  for (int i = 0; !(digest_of(other) < digest_of(same)); ++i) {
    other = entry_of(same.envelope, Setting{"name", std::to_string(i)});
  }
  farm.keep(other);
  CHECK(CowGroups(farm.entries()).group_of(a) == std::vector<CowId>{a});
}

}  // namespace evenclaw
