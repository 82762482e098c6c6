#include "core/api/whom_to_ring.hpp"

#include <doctest/doctest.h>

#include "core/log/body.hpp"
#include "tests/core/api/workplace.hpp"

namespace evenclaw::test {

TEST_CASE("whom to ring is what was said last, and nobody until it is said") {
  Workplace place;
  CHECK(whom_to_ring(place.ports()).value().empty());
  REQUIRE(set_whom_to_ring(place.ports(), " Anna, 01234 567890 ").ok());
  CHECK(whom_to_ring(place.ports()).value() == "Anna, 01234 567890");
  REQUIRE(set_whom_to_ring(place.ports(), "Ben, 09876 543210").ok());
  CHECK(whom_to_ring(place.ports()).value() == "Ben, 09876 543210");
  REQUIRE(set_whom_to_ring(place.ports(), "Off").ok());
  CHECK(whom_to_ring(place.ports()).value().empty());
}

TEST_CASE("a telephone number stands in no entry, and is erased once it holds no longer") {
  Workplace place;
  REQUIRE(set_whom_to_ring(place.ports(), "Anna, 01234 567890").ok());
  bool is_in_log = false;
  REQUIRE(place.store
              .read_entries({},
                            [&](const Entry& entry) {
                              is_in_log |= entry.body &&
                                           entry.body->bytes().find("01234") != std::string::npos;
                              return true;
                            })
              .ok());
  CHECK_FALSE(is_in_log);
  REQUIRE(set_whom_to_ring(place.ports(), "off").ok());
  const auto everybody = place.ports().directory.everybody();
  for (const Person& person : everybody.value()) CHECK(person.name.empty());
}

TEST_CASE("under whom the words lie is known as long as they hold") {
  Workplace place;
  CHECK_FALSE(ring_person(place.ports()).value().has_value());
  REQUIRE(set_whom_to_ring(place.ports(), "Anna, 01234 567890").ok());
  const auto everybody = place.ports().directory.everybody();
  const auto person = ring_person(place.ports()).value();
  REQUIRE(person.has_value());
  CHECK(everybody.value().back().id == *person);
  REQUIRE(set_whom_to_ring(place.ports(), "off").ok());
  CHECK_FALSE(ring_person(place.ports()).value().has_value());
}

TEST_CASE("words that cannot stand on one line of the sheet are refused") {
  Workplace place;
  for (const std::string& said : {std::string(), std::string("a\nb"), std::string(81, 'x')}) {
    const auto answer = set_whom_to_ring(place.ports(), said);
    REQUIRE_FALSE(answer.ok());
    CHECK(answer.faults().front().slug == "usage");
  }
}

}  // namespace evenclaw::test
