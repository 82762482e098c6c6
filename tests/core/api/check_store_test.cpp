#include <doctest/doctest.h>

#include <array>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "core/api/transfer.hpp"
#include "core/trade/cow_rows.hpp"
#include "store/memory/memory_store.hpp"
#include "tests/store/sample_entries.hpp"

namespace evenclaw::test {

namespace {

/// She carries 412 from one day to another, or to this day.
struct Carrier {
  int cow;
  int from;
  std::optional<int> to;
};

void give_412(MemoryStore& store, const std::vector<Carrier>& carriers) {
  Write write;
  for (const Carrier& carrier : carriers) {
    CowNumberRow row;
    row.herd = sample_herd(1);
    row.cow = sample_cow(carrier.cow);
    row.number = "412";
    row.valid_from = Day{carrier.from};
    if (carrier.to) row.valid_to = Day{*carrier.to};
    PictureOfCow picture{sample_herd(1), {row.cow}, {}};
    picture.rows.cow_numbers.push_back(row);
    write.cows.push_back(std::move(picture));
  }
  REQUIRE(store.write(write).ok());
}

std::vector<std::string> found_of(const std::vector<Carrier>& carriers) {
  MemoryStore store;
  give_412(store, carriers);
  std::vector<std::string> found;
  for (const CheckFinding& finding : check_store(store).value().findings) {
    found.push_back(finding.what);
  }
  return found;
}

CheckedStore checked(const std::vector<Entry>& entries) {
  MemoryStore store;
  Write write;
  write.entries = entries;
  REQUIRE(store.write(write).ok());
  return check_store(store).value();
}

Entry of_kind(std::int64_t number, std::string_view kind, std::string body) {
  Envelope envelope = sample_envelope(number, sample_device(1), sample_herd(1));
  envelope.kind = kind;
  return make_entry(std::move(envelope), std::move(body));
}

}  // namespace

TEST_CASE("a number that two cows carry at once is told, whichever cow stands between them") {
  const std::vector<std::string> twice = {"number_given_twice"};
  // All orders of the cows, since they are read in the order of ids that mean nothing.
  using Order = std::array<int, 3>;
  for (const Order& cows : {Order{1, 2, 3}, Order{1, 3, 2}, Order{2, 1, 3}, Order{2, 3, 1},
                            Order{3, 1, 2}, Order{3, 2, 1}}) {
    const int a = cows[0];
    const int b = cows[1];
    const int c = cows[2];
    CAPTURE(a);
    CAPTURE(b);
    CHECK(found_of({{a, 100, 200}, {b, 300, {}}, {c, 150, 250}}) == twice);
    CHECK(found_of({{a, 100, {}}, {b, 120, 130}, {c, 140, 150}}) == twice);
    CHECK(found_of({{a, 100, 110}, {b, 120, 130}, {c, 140, {}}}).empty());
  }
}

TEST_CASE("the last day of one cow and the first of the next are the same day: carried by two") {
  CHECK(found_of({{1, 100, 200}, {2, 200, {}}}).size() == 1);
  CHECK(found_of({{1, 100, 200}, {2, 201, {}}}).empty());
}

TEST_CASE("a body that cannot be read is told with its entry, and the others are counted on") {
  const Entry unread = of_kind(1, "turn", "{\"visit\":7}");
  const CheckedStore store = checked({unread, sample_entry(2, sample_device(1), sample_herd(1))});
  CHECK(store.entries == 2);
  REQUIRE(store.findings.size() == 1);
  CHECK(store.findings.front().what == "body_not_understood");
  CHECK(store.findings.front().entry == unread.envelope.id);
}

TEST_CASE("what a later version wrote is counted and is no flaw") {
  const CheckedStore store = checked({of_kind(1, "scored_by_camera", "{}")});
  CHECK(store.unknown_kinds == 1);
  CHECK(store.findings.empty());
}

TEST_CASE("a body that was taken away is counted and is no flaw") {
  const Entry target = sample_entry(1, sample_device(1), sample_herd(1));
  const CheckedStore store =
      checked({without_body(target), sample_redact(2, sample_device(1), target)});
  CHECK(store.redacted == 1);
  CHECK(store.findings.empty());
}

TEST_CASE("an entry that a device counted and nobody has is told as missing") {
  const CheckedStore store = checked({sample_entry(1, sample_device(1), sample_herd(1)),
                                      sample_entry(3, sample_device(1), sample_herd(1))});
  REQUIRE(store.findings.size() == 1);
  CHECK(store.findings.front().what == "gap");
  CHECK(store.findings.front().words.find("count 2") != std::string::npos);
}

TEST_CASE("an entry kept in two versions is told once with its name") {
  const Entry entry = sample_entry(1, sample_device(1), sample_herd(1));
  const CheckedStore store = checked({entry, other_version(entry, 2)});
  REQUIRE(store.findings.size() == 1);
  CHECK(store.findings.front().what == "two_versions");
  CHECK(store.findings.front().entry == entry.envelope.id);
}

}  // namespace evenclaw::test
