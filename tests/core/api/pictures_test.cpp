#include "core/api/pictures.hpp"

#include <doctest/doctest.h>

#include <string>

#include "core/log/body.hpp"
#include "core/trade/cow_rows.hpp"
#include "tests/core/api/workplace.hpp"
#include "tests/store/sample_entries.hpp"

namespace evenclaw::test {

namespace {

Entry number_of(std::int64_t number) {
  return entry_of(sample_envelope(number, sample_device(1), sample_herd(1)),
                  NumberGiven{sample_cow(number), std::to_string(number), Day{20'000}});
}

}  // namespace

TEST_CASE("more cows than go into one write are all pictured") {
  MemoryStore store;
  Write write;
  SubjectsToPicture subjects;
  for (std::int64_t number = 1; number <= 250; ++number) {
    write.entries.push_back(number_of(number));
    subjects.cows.insert(sample_cow(number));
  }
  REQUIRE(store.write(write).ok());
  REQUIRE(picture_anew(store, sample_herd(1), subjects).ok());
  CHECK(select_as<CowNumberRow>(store, sample_herd(1)).value().size() == 250);
}

TEST_CASE("cows that are one are pictured once, whichever of them was touched") {
  MemoryStore store;
  Write write;
  write.entries = {number_of(1), number_of(2),
                   entry_of(sample_envelope(3, sample_device(1), sample_herd(1)),
                            SameCow{sample_cow(1), sample_cow(2)})};
  REQUIRE(add_pictures(store, write).ok());
  REQUIRE(write.cows.size() == 1);
  CHECK(write.cows.front().group.size() == 2);
  CHECK(write.cows.front().rows.cow_numbers.size() == 2);
}

TEST_CASE("a write for two herds gets the rows of both, each from its own entries") {
  MemoryStore store;
  Write write;
  for (const std::int64_t of : {1, 2}) {
    write.entries.push_back(
        entry_of(sample_envelope(1, sample_device(1), sample_herd(of)),
                 NumberGiven{sample_cow(7), std::to_string(400 + of), Day{20'000}}));
  }
  REQUIRE(add_pictures(store, write).ok());
  REQUIRE(write.cows.size() == 2);
  for (const PictureOfCow& picture : write.cows) {
    REQUIRE(picture.rows.cow_numbers.size() == 1);
    const bool is_of_first = picture.herd == sample_herd(1);
    CHECK(picture.rows.cow_numbers.front().number == (is_of_first ? "401" : "402"));
  }
}

}  // namespace evenclaw::test
