#include "core/api/call_language.hpp"

#include <doctest/doctest.h>

#include "tests/core/api/workplace.hpp"

namespace evenclaw::test {

TEST_CASE("days are called in English until the business settles another language") {
  Workplace place;
  CHECK(call_language_of(place.store).value()->code == "en");
  REQUIRE(set_call_language(place.ports(), "de").ok());
  CHECK(call_language_of(place.store).value()->code == "de");
  REQUIRE(set_call_language(place.ports(), "english").ok());
  CHECK(call_language_of(place.store).value()->code == "en");
}

TEST_CASE("a language of which there are no words is refused with those there are") {
  Workplace place;
  const auto refused = set_call_language(place.ports(), "xx");
  REQUIRE_FALSE(refused.ok());
  CHECK(refused.faults().front().slug == "usage");
  CHECK(refused.faults().front().remedy == "There are: en (English), de (Deutsch).");
}

TEST_CASE(
    "the language stays while a cow is in the crush, for what was said of her is read again") {
  Workplace place;
  Recording recording = place.record(place.start());
  REQUIRE(recording.say("412 LH SU").ok());
  const auto refused = set_call_language(place.ports(), "de");
  REQUIRE_FALSE(refused.ok());
  CHECK(refused.faults().front().slug == "call-impossible");
  REQUIRE(recording.say("done").ok());
  CHECK(set_call_language(place.ports(), "de").ok());
}

}  // namespace evenclaw::test
