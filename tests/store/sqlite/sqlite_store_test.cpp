#include "store/sqlite/sqlite_store.hpp"

#include <doctest/doctest.h>

#include <optional>

#include "store/sqlite/connection.hpp"
#include "tests/store/sample_entries.hpp"
#include "tests/store/sqlite/opened_store.hpp"
#include "tests/store/temporary_folder.hpp"

using namespace evenclaw;

namespace {

Write write_of(std::vector<Entry> entries) {
  Write write;
  write.entries = std::move(entries);
  return write;
}

Entry entry_with(std::string_view words) {
  const CowLeft body{sample_cow(1), Day{20'000}, std::string(words), {}};
  return entry_of(sample_envelope(1, sample_device(1), sample_herd(1)), body);
}

}  // namespace

TEST_CASE("what was written is there when the file is opened again") {
  const TemporaryFolder folder;
  const Entry entry = sample_entry(1, sample_device(1), sample_herd(1));
  REQUIRE(opened_store(folder.file("records"), OpenMode::create)->write(write_of({entry})).ok());
  for (const OpenMode mode : {OpenMode::existing, OpenMode::read_only, OpenMode::create}) {
    const auto found = opened_store(folder.file("records"), mode)->find_entry(entry.envelope.id);
    REQUIRE(found.ok());
    CHECK(*found == entry);
  }
}

TEST_CASE("two programs see each other's writes, and the one that was too late is told") {
  const TemporaryFolder folder;
  const auto one = opened_store(folder.file("records"), OpenMode::create);
  REQUIRE(one->set_identity(BusinessId{sample_id("business", 1)}, sample_device(1)).ok());
  const auto two = opened_store(folder.file("records"), OpenMode::existing);
  const Uuid herd = sample_herd(1).value;
  REQUIRE(*one->last_seq(sample_device(1), herd) == 0);
  REQUIRE(*two->last_seq(sample_device(1), herd) == 0);

  const Entry first = sample_entry(1, sample_device(1), sample_herd(1));
  Envelope second = sample_envelope(2, sample_device(1), sample_herd(1));
  second.seq = 1;
  REQUIRE(one->write(write_of({first})).ok());
  const auto late = two->write(write_of({entry_of(second, CowLeft{})}));
  REQUIRE_FALSE(late.ok());
  CHECK(late.faults().front().slug == "store-busy");
  CHECK(*two->last_seq(sample_device(1), herd) == 1);
}

TEST_CASE("a writer that waited in vain for another is told") {
  const TemporaryFolder folder;
  const auto store = opened_store(folder.file("records"), OpenMode::create);
  Connection other(folder.file("records"), Access::write);
  const Transaction held(other);
  const auto refused = store->write(write_of({entry_with("sold")}));
  REQUIRE_FALSE(refused.ok());
  CHECK(refused.faults().front().slug == "store-busy");
  CHECK_FALSE(refused.faults().front().remedy.empty());
}

TEST_CASE("a file opened for reading only answers and takes nothing") {
  const TemporaryFolder folder;
  { opened_store(folder.file("records"), OpenMode::create); }
  const auto store = opened_store(folder.file("records"), OpenMode::read_only);
  CHECK(store->select({"cow", std::nullopt, {}, {}}).ok());
  CHECK(store->identity().ok());
  const auto refused = store->write(write_of({entry_with("sold")}));
  REQUIRE_FALSE(refused.ok());
  CHECK(refused.faults().front().slug == "file-read-only");
  CHECK_FALSE(store->set_identity(BusinessId{}, sample_device(1)).ok());
}

TEST_CASE("a redacted body cannot be found in the bytes of the file any more") {
  const TemporaryFolder folder;
  const std::string file = folder.file("records");
  const auto store = opened_store(file, OpenMode::create);
  const Entry entry = entry_with("told by a very particular person");
  REQUIRE(store->write(write_of({entry})).ok());
  REQUIRE(file_holds(file, "a very particular person"));
  REQUIRE(store->write(write_of({sample_redact(2, sample_device(1), entry)})).ok());
  CHECK_FALSE(file_holds(file, "a very particular person"));
}

TEST_CASE("neither can a body whose redacted form came from elsewhere") {
  const TemporaryFolder folder;
  const std::string file = folder.file("records");
  const auto store = opened_store(file, OpenMode::create);
  const Entry entry = entry_with("told by a very particular person");
  REQUIRE(store->write(write_of({entry})).ok());
  const auto answer = store->write(write_of({without_body(entry)}));
  REQUIRE(answer.ok());
  CHECK(answer->front() == Kept::redacted_now);
  CHECK_FALSE(file_holds(file, "a very particular person"));
}

TEST_CASE("an entry that was changed in the file is not handed out as if it were sound") {
  const TemporaryFolder folder;
  const std::string file = folder.file("records");
  const auto store = opened_store(file, OpenMode::create);
  REQUIRE(store->write(write_of({entry_with("sold")})).ok());
  { Connection(file, Access::write).run("UPDATE entry SET body = replace(body, 'sold', 'dead')"); }
  const Outcome read = store->read_entries({}, [](const Entry&) { return true; });
  REQUIRE_FALSE(read.ok());
  CHECK(read.faults().front().slug == "file-damaged");
}

TEST_CASE("a table that is missing from the file is damage, not a crash") {
  const TemporaryFolder folder;
  const std::string file = folder.file("records");
  const auto store = opened_store(file, OpenMode::create);
  { Connection(file, Access::write).run("DROP TABLE turn"); }
  const auto selected = store->select({"turn", std::nullopt, {}, {}});
  REQUIRE_FALSE(selected.ok());
  CHECK(selected.faults().front().slug == "file-damaged");
}
