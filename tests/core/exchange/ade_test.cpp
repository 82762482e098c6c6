#include "core/exchange/ade.hpp"

#include <doctest/doctest.h>

using namespace evenclaw;

TEST_CASE("fractions become text and everything else stays") {
  CHECK(fractions_as_text(R"({"a":1.5,"b":-2,"c":"1.5","d":[1e3,"x\"1.5"]})") ==
        R"({"a":"1.5","b":-2,"c":"1.5","d":["1e3","x\"1.5"]})");
  CHECK(fractions_as_text("").empty());
}

TEST_CASE("every resource has a type and is found by it") {
  for (const AdeResource resource : {AdeResource::animal, AdeResource::treatment}) {
    CHECK(resource_of(type_of(resource)) == resource);
  }
  CHECK_FALSE(resource_of("icarFeedIntakeEventResource"));
}

TEST_CASE("reasons are read as they stand in the two enumerations") {
  CHECK(leaving_reason_of("LegOrClaw") == LeavingReason::feet_and_legs);
  CHECK(leaving_reason_of("Unknown") == LeavingReason::not_told);
  CHECK(leaving_reason_of("Whim") == LeavingReason::other);
  CHECK(leaving_reason_of("") == LeavingReason::not_told);
}
