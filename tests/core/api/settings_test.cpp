#include "core/api/settings.hpp"

#include <doctest/doctest.h>

#include "tests/core/api/workplace.hpp"

namespace evenclaw::test {

TEST_CASE("what the business settled last holds, each setting by itself") {
  Workplace place;
  CHECK_FALSE(setting_of(place.store, "colour").value());
  REQUIRE(settle_for_business(place.ports(), "colour", "blue").ok());
  REQUIRE(settle_for_business(place.ports(), "shade", "dark").ok());
  REQUIRE(settle_for_business(place.ports(), "colour", "red").ok());
  CHECK(setting_of(place.store, "colour").value() == "red");
  CHECK(setting_of(place.store, "shade").value() == "dark");
}

}  // namespace evenclaw::test
