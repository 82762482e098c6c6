#include "core/api/recording/walks_by.hpp"

#include <doctest/doctest.h>

#include "tests/core/trade/call_line/saying.hpp"

using namespace evenclaw;

namespace {

bool only_walks(std::string_view text) {
  const Result<Line> line = read_line(text, saying::in_crush(false), english());
  INFO(text);
  REQUIRE(line.ok());
  return says_only_that_she_walks(*line) != nullptr;
}

}  // namespace

TEST_CASE("a sure number that walks sound, and nothing else") {
  CHECK(only_walks("416 walks sound"));
  CHECK_FALSE(only_walks("416? walks sound"));
  CHECK_FALSE(only_walks("416 walks sound; done"));
  CHECK_FALSE(only_walks("416 lame"));
  CHECK_FALSE(only_walks("416"));
}

TEST_CASE("a turn that holds anything else is more than how she walks") {
  CHECK(says_only_how_she_walks(saying::turn_of({"416 walks sound"})));
  CHECK_FALSE(says_only_how_she_walks(saying::turn_of({"416 walks sound", "LH trimmed"})));
  CHECK_FALSE(says_only_how_she_walks(saying::turn_of({"416 fresh; walks sound"})));
  CHECK_FALSE(says_only_how_she_walks(saying::turn_of({"416"})));
}

TEST_CASE("how she walks and is handled says nothing of her feet, whatever else does") {
  CHECK(says_nothing_of_her_feet(saying::turn_of({"416 kicks"})));
  CHECK(says_nothing_of_her_feet(saying::turn_of({"416 walks sound; needs the hoist"})));
  CHECK_FALSE(says_nothing_of_her_feet(saying::turn_of({"416 kicks; to straw"})));
  CHECK_FALSE(says_nothing_of_her_feet(saying::turn_of({"416 kicks", "LH"})));
  CHECK_FALSE(says_nothing_of_her_feet(saying::turn_of({"416"})));
}
