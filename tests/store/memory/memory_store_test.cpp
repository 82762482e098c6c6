#include "store/memory/memory_store.hpp"

#include <doctest/doctest.h>

#include "tests/store/sample_rows.hpp"

using namespace evenclaw;

// That it answers as every store does is held by tests/conformance; this runs on every target.

TEST_CASE("entries, rows, draft and identity come back from memory") {
  MemoryStore store;
  Write write = drawn_pictures(1);
  write.entries = {sample_entry(1, sample_device(1), sample_herd(1)),
                   sample_entry(2, sample_device(1), sample_herd(1))};
  write.draft = "412";
  const auto kept = store.write(write);
  REQUIRE(kept.ok());
  CHECK(*kept == std::vector<Kept>{Kept::stored, Kept::stored});
  CHECK(*store.find_entry(write.entries[1].envelope.id) == write.entries[1]);
  CHECK(*store.last_seq(sample_device(1), sample_herd(1).value) == 2);
  CHECK(*store.last_order(sample_herd(1).value) == 2);
  CHECK(*store.draft() == "412");
  CHECK_FALSE(store.select({"finding", sample_herd(1), {}, {}})->empty());
}

TEST_CASE("rows asked for by cow are those that a look at all rows gives") {
  MemoryStore store;
  REQUIRE(store.write(drawn_pictures(2)).ok());
  for (const TableShape& shape : all_tables()) {
    if (shape.columns.at(1).name != "cow") continue;
    const std::string table(shape.name);
    const Filter of_cow{"cow", Compare::equal, Cell(to_text(sample_cow(21)))};
    const auto everything = store.select({table, std::nullopt, {}, {}});
    REQUIRE(everything.ok());
    for (const auto& herd : {std::optional<HerdId>(), std::optional<HerdId>(sample_herd(2))}) {
      const RowSelection wanted{table, herd, {of_cow}, {}};
      CHECK(*store.select(wanted) == select_rows(wanted, *everything));
    }
  }
}

TEST_CASE("a business without a device of its own refuses no seq") {
  MemoryStore store;
  Write write;
  write.entries = {sample_entry(1, sample_device(1), sample_herd(1))};
  REQUIRE(store.write(write).ok());
  Envelope same_seq = sample_envelope(2, sample_device(1), sample_herd(1));
  same_seq.seq = 1;
  write.entries = {entry_of(same_seq, CowLeft{sample_cow(1), Day{20'000}, "", {}})};
  CHECK(store.write(write).ok());
}
