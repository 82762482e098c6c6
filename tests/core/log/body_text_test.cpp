#include "core/log/body_text.hpp"

#include <doctest/doctest.h>

#include <string>

namespace evenclaw {

namespace {

struct Weight {
  int kilograms = 0;
};

}  // namespace

TEST_CASE("what was read of a body is remembered with every copy of it") {
  const BodyText body("{}");
  const BodyText copy = body;
  CHECK_FALSE(body.remembered<Weight>(1));
  copy.remember(1, Weight{640});
  REQUIRE(body.remembered<Weight>(1));
  CHECK(body.remembered<Weight>(1)->kilograms == 640);
}

TEST_CASE("what was read in one version of a kind is not taken for another") {
  const BodyText body("{}");
  body.remember(1, Weight{640});
  CHECK_FALSE(body.remembered<Weight>(2));
  CHECK_FALSE(body.remembered<std::string>(1));
}

TEST_CASE("bodies are alike by their bytes, whether they were read or not") {
  const BodyText read("{}");
  read.remember(1, Weight{640});
  CHECK(read == BodyText("{}"));
  CHECK_FALSE(read == BodyText("{ }"));
  CHECK_FALSE(BodyText("{}").remembered<Weight>(1));
}

}  // namespace evenclaw
