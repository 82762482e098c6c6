#include "core/trade/typed_code.hpp"

#include <doctest/doctest.h>

namespace evenclaw {

TEST_CASE("a tag is read without the marks that part its groups") {
  CHECK(typed_code("uk 123450-600.001", ".-").characters == "UK123450600001");
  CHECK(typed_code("826\t000 000600001", "-").characters == "826000000600001");
}

TEST_CASE("a mark that parts no groups here stays, so that it can be pointed at") {
  CHECK(typed_code("826.000", "-").characters == "826.000");
}

TEST_CASE("each character knows the column it was typed in") {
  const TypedCode code = typed_code(" uk-1", "-");
  REQUIRE(code.characters == "UK1");
  CHECK(code.column(0) == 2);
  CHECK(code.column(2) == 5);
}

TEST_CASE("what was never typed is pointed at where the text begins") {
  CHECK(typed_code("UK", "-").column(2) == 1);
  CHECK(typed_code("", "-").column(0) == 1);
}

}  // namespace evenclaw
