#include "core/trade/electronic_number.hpp"

#include <doctest/doctest.h>

#include <cstdint>
#include <string>

#include "core/base/random.hpp"
#include "core/trade/country.hpp"

namespace evenclaw::test {

namespace {

ElectronicNumber number(std::string_view typed) {
  return electronic_number(typed).value();
}

int column_of_fault(std::string_view typed) {
  const auto read = electronic_number(typed);
  return read ? 0 : read.faults().front().column;
}

const Country& any_country(RandomStream& random) {
  const auto all = all_countries();
  return all[random.below(static_cast<std::uint32_t>(all.size()))];
}

}  // namespace

TEST_CASE("the published electronic numbers are read as country and animal") {
  CHECK(number("276000312312345") == ElectronicNumber{276, 312312345});
  CHECK(number("528000680250829") == ElectronicNumber{528, 680250829});
  CHECK(number("840003123456789") == ElectronicNumber{840, 3123456789});
  CHECK(number("826230011200123") == ElectronicNumber{826, 230011200123});
}

TEST_CASE("a number that 38 bits cannot hold is no electronic number") {
  CHECK(electronic_number("826274877906943"));
  CHECK_FALSE(electronic_number("826274877906944"));
  // The printed British tag 284205 700016 cannot be the number in it.
  CHECK(column_of_fault("826284205700016") == 4);
}

TEST_CASE("Northern Ireland has its number although ISO gives none") {
  CHECK(kind_of(number("899000000000001")) == ElectronicKind::national);
}

TEST_CASE("900 to 998 are makers and 999 is for tests") {
  CHECK(kind_of(number("276000312312345")) == ElectronicKind::national);
  CHECK(kind_of(number("900000000000001")) == ElectronicKind::of_maker);
  CHECK(kind_of(number("972000000000001")) == ElectronicKind::of_maker);
  CHECK(kind_of(number("998000000000001")) == ElectronicKind::of_maker);
  CHECK(kind_of(number("999000000000001")) == ElectronicKind::test);
}

TEST_CASE("every first three digits lie in one range that has a source") {
  std::int32_t next = 0;
  for (const CodeRange& range : all_code_ranges()) {
    CHECK(range.first == next);
    CHECK_FALSE(range.source.empty());
    next = range.last + 1;
  }
  CHECK(next == 1000);
}

TEST_CASE("the first three digits are a country that exists, zeros and all") {
  CHECK(number("032000000000001").country == 32);
  CHECK(column_of_fault("001000000000001") == 1);
  CHECK(column_of_fault("898000000000001") == 1);
}

TEST_CASE("blanks and hyphens between the digits do not count") {
  CHECK(number("276 0003-12312345") == ElectronicNumber{276, 312312345});
  CHECK(is_written_as_electronic("276 000312312345"));
}

TEST_CASE("fifteen digits are asked for, and what is no digit is pointed at") {
  CHECK(column_of_fault("27600031231234") == 1);
  CHECK(column_of_fault("276 00031231234O") == 16);
  CHECK_FALSE(is_written_as_electronic("27600031231234"));
  CHECK_FALSE(is_written_as_electronic("412"));
}

TEST_CASE("the 64 bits of the tag are the same number") {
  CHECK(number("80004500129d8219") == ElectronicNumber{276, 312312345});
  CHECK(number("8000D200BA2C2B15") == ElectronicNumber{840, 3123456789});
  CHECK(hex_of({826, 230011200123}) == "8000ceb58dbc627b");
  CHECK(is_written_as_electronic("80004500129d8219"));
}

TEST_CASE("bits that are not of an animal are no number of a cow") {
  CHECK_FALSE(electronic_number("00004500129d8219"));
}

TEST_CASE("reading what is printed gives the same number, in digits and in bits") {
  RandomStream random(20261126, 3);
  for (int i = 0; i < 500; ++i) {
    const bool of_country = random.below(2) == 0;
    const auto& country = any_country(random);
    const auto first =
        of_country ? country.number : static_cast<std::int32_t>(900 + random.below(100));
    const auto low = static_cast<std::int64_t>(random.below(1U << 19));
    const std::int64_t animal = (static_cast<std::int64_t>(random.below(1U << 19)) << 19) | low;
    const ElectronicNumber known{first, animal};
    CAPTURE(first);
    CAPTURE(animal);
    CHECK(number(to_text(known)) == known);
    CHECK(number(hex_of(known)) == known);
    CHECK(to_text(known).size() == 15);
  }
}

}  // namespace evenclaw::test
