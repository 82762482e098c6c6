#include "core/trade/lesion_definition.hpp"

#include <doctest/doctest.h>

using namespace evenclaw;

TEST_CASE("every lesion is told in a sentence of our own, with its source") {
  const auto definitions = all_lesion_definitions();
  REQUIRE(definitions.size() == all_lesions().size());
  for (std::size_t i = 0; i < definitions.size(); ++i) {
    CAPTURE(all_lesions()[i].name);
    CHECK(definitions[i].lesion == all_lesions()[i].lesion);
    CHECK_FALSE(definitions[i].words.empty());
    CHECK_FALSE(definitions[i].source.empty());
  }
}
