#include "core/base/hex.hpp"

#include <doctest/doctest.h>

namespace evenclaw {

TEST_CASE("every byte reads back from its two digits") {
  for (unsigned byte = 0; byte < 256; ++byte) {
    std::string text;
    append_hex(text, static_cast<std::uint8_t>(byte));
    REQUIRE(text.size() == 2);
    const int high = hex_value(text[0], HexCase::lower_only);
    const int low = hex_value(text[1], HexCase::lower_only);
    REQUIRE(high * 16 + low == static_cast<int>(byte));
  }
}

TEST_CASE("capital digits count only where either case is allowed") {
  CHECK(hex_value('F', HexCase::either) == 15);
  CHECK(hex_value('F', HexCase::lower_only) == -1);
  CHECK(hex_value('f', HexCase::either) == 15);
}

TEST_CASE("what is no digit has no value") {
  for (const char c : {'g', 'G', '/', ':', '@', '`', ' ', '-', '\0'}) {
    CAPTURE(static_cast<int>(c));
    CHECK(hex_value(c, HexCase::either) == -1);
  }
}

}  // namespace evenclaw
