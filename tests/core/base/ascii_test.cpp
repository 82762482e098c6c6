#include "core/base/ascii.hpp"

#include <doctest/doctest.h>

#include <initializer_list>

namespace evenclaw {

TEST_CASE("the neighbours of digits and letters are neither") {
  for (const char c : {'0', '9'}) CHECK(is_digit(c));
  for (const char c : {'a', 'z'}) CHECK(is_small_letter(c));
  for (const char c : {'A', 'Z'}) CHECK(is_capital(c));
  for (const char c : {'/', ':', '@', '[', '`', '{', ' ', '\0', '\xC3'}) {
    CAPTURE(c);
    CHECK_FALSE(is_digit(c));
    CHECK_FALSE(is_small_letter(c));
    CHECK_FALSE(is_capital(c));
    CHECK(capital(c) == c);
  }
}

TEST_CASE("small letters become capitals, all else stays") {
  CHECK(capital('a') == 'A');
  CHECK(capital('z') == 'Z');
  CHECK(capital('A') == 'A');
  CHECK(capital('7') == '7');
}

}  // namespace evenclaw
