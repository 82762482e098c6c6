#include "core/api/herd_log.hpp"

#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "core/log/body.hpp"
#include "tests/core/api/workplace.hpp"
#include "tests/store/sample_entries.hpp"

namespace evenclaw::test {

namespace {

Entry number_of(std::int64_t entry, std::int64_t cow, std::string number) {
  return entry_of(
      sample_envelope(entry, sample_device(1), sample_herd(1)),
      NumberGiven{sample_cow(cow), std::move(number), Day{20'000 + static_cast<int>(entry)}});
}

std::vector<std::string> numbers_of(HerdLog& log, std::int64_t cow) {
  std::vector<std::string> numbers;
  const std::vector<CowId> group = {sample_cow(cow)};
  for (const CowNumberRow& row : log.rows_of_cows(group).value().cow_numbers) {
    numbers.push_back(row.number);
  }
  return numbers;
}

void keep(MemoryStore& store, const std::vector<Entry>& entries) {
  Write write;
  write.entries = entries;
  REQUIRE(store.write(write).ok());
}

using Numbers = std::vector<std::string>;

}  // namespace

TEST_CASE("what is not written yet counts beside what is, for its own herd only") {
  MemoryStore store;
  keep(store, {number_of(1, 1, "412")});
  const std::vector<Entry> unwritten = {
      number_of(2, 1, "413"), entry_of(sample_envelope(3, sample_device(1), sample_herd(2)),
                                       NumberGiven{sample_cow(1), "414", Day{20'000}})};
  HerdLog log(store, sample_herd(1));
  log.also(unwritten);
  CHECK(numbers_of(log, 1) == Numbers{"412", "413"});
}

TEST_CASE("the hundredth cow that is asked about is answered like the first") {
  MemoryStore store;
  std::vector<Entry> unwritten;
  for (std::int64_t cow = 1; cow <= 100; ++cow) {
    unwritten.push_back(number_of(cow, cow, std::to_string(cow)));
  }
  HerdLog log(store, sample_herd(1));
  log.also(unwritten);
  for (std::int64_t cow = 1; cow <= 100; ++cow) {
    CHECK(numbers_of(log, cow) == Numbers{std::to_string(cow)});
  }
  CHECK(numbers_of(log, 101).empty());
}

TEST_CASE("of a short log each of many cows has what it told beside what is not written yet") {
  MemoryStore store;
  std::vector<Entry> written;
  std::vector<Entry> unwritten;
  for (std::int64_t cow = 1; cow <= 50; ++cow) {
    written.push_back(number_of(cow, cow, std::to_string(cow)));
    unwritten.push_back(number_of(50 + cow, cow, std::to_string(900 + cow)));
  }
  keep(store, written);
  HerdLog log(store, sample_herd(1));
  log.also(unwritten);
  log.without(written.back().envelope.id);
  for (std::int64_t cow = 1; cow < 50; ++cow) {
    CHECK(numbers_of(log, cow) == Numbers{std::to_string(cow), std::to_string(900 + cow)});
  }
  CHECK(numbers_of(log, 50) == Numbers{"950"});
}

TEST_CASE("an entry in two versions is found by what one of them names, however many are asked") {
  MemoryStore store;
  keep(store, {number_of(1, 1, "412"), number_of(1, 2, "413")});
  std::vector<Entry> unwritten;
  for (std::int64_t entry = 3; entry <= 60; ++entry) {
    unwritten.push_back(number_of(entry, entry, std::to_string(entry)));
  }
  HerdLog asked_of_many(store, sample_herd(1));
  asked_of_many.also(unwritten);
  for (std::int64_t cow = 3; cow <= 60; ++cow) REQUIRE(numbers_of(asked_of_many, cow).size() == 1);
  HerdLog asked_of_few(store, sample_herd(1));
  asked_of_few.also(unwritten);
  for (const std::int64_t cow : {1, 2}) {
    CHECK(numbers_of(asked_of_many, cow) == numbers_of(asked_of_few, cow));
  }
}

TEST_CASE("an entry that is left out counts as never written, whether the store has it or not") {
  MemoryStore store;
  const Entry written = number_of(1, 1, "412");
  keep(store, {written});
  const std::vector<Entry> unwritten = {number_of(2, 1, "413"), number_of(3, 1, "414")};
  HerdLog log(store, sample_herd(1));
  log.also(unwritten);
  log.without(written.envelope.id);
  log.without(unwritten.back().envelope.id);
  CHECK(numbers_of(log, 1) == Numbers{"413"});
}

TEST_CASE("cows that are united by what is not written yet are one when they are asked about") {
  MemoryStore store;
  const std::vector<Entry> unwritten = {entry_of(
      sample_envelope(1, sample_device(1), sample_herd(1)), SameCow{sample_cow(1), sample_cow(2)})};
  HerdLog log(store, sample_herd(1));
  CHECK(log.groups().value().group_of(sample_cow(1)).size() == 1);
  log.also(unwritten);
  CHECK(log.groups().value().group_of(sample_cow(1)).size() == 2);
  log.without(unwritten.front().envelope.id);
  CHECK(log.groups().value().group_of(sample_cow(1)).size() == 1);
}

TEST_CASE("she who was told gone and stands in the crush has not left") {
  MemoryStore store;
  keep(store,
       {number_of(1, 1, "412"), entry_of(sample_envelope(2, sample_device(1), sample_herd(1)),
                                         CowLeft{sample_cow(1), Day{20'100}, {}, {}})});
  HerdLog log(store, sample_herd(1));
  const auto left_on = [&](Result<CowPast> past) { return past.value().rows.cows.front().left_on; };
  CHECK(left_on(log.past_of(sample_cow(1), {})) == Day{20'100});
  CHECK_FALSE(left_on(log.past_of_one_here(sample_cow(1), {})));
}

}  // namespace evenclaw::test
