#include "demo/kept_writes.hpp"

#include <doctest/doctest.h>

#include "tests/demo/small_business.hpp"

namespace evenclaw::demo {

namespace {

std::vector<std::string> lines_of(Store& store) {
  std::vector<std::string> lines;
  (void)store.read_everything([&](const Entry& entry) {
    lines.push_back(entry_line(entry));
    return true;
  });
  return lines;
}

}  // namespace

TEST_CASE("what was written in many acts comes to the same when it is written in one") {
  const BusinessWanted wanted = half_a_year();
  RecordedFarm farm(wanted);
  KeptWrites kept(farm.store);
  const Ports ports{kept, farm.directory, farm.clock, farm.ids};
  REQUIRE(record_farm(ports, farm.clock, tell_story(wanted, small_farm_index)).ok());

  MemoryStore elsewhere;
  const StoreIdentity identity = farm.store.identity().value();
  REQUIRE(elsewhere.set_identity(identity.business, identity.device).ok());
  REQUIRE(elsewhere.write(kept.taken()).ok());

  // The entry that names the device was written before the writes were kept.
  CHECK(lines_of(elsewhere).size() + 1 == lines_of(farm.store).size());
  for (const TableShape& shape : all_tables()) {
    const RowSelection all{std::string(shape.name), std::nullopt, {}, {}};
    CAPTURE(shape.name);
    CHECK(elsewhere.select(all).value() == farm.store.select(all).value());
  }
  CHECK(kept.taken().entries.empty());
}

}  // namespace evenclaw::demo
