#include "cli/columns.hpp"

#include <doctest/doctest.h>

namespace evenclaw::cli {

TEST_CASE("Text is filled up to a width by characters, not bytes") {
  CHECK(padded("412", 6) == "412   ");
  CHECK(padded("Kuh Käthe", 10) == "Kuh Käthe ");
  CHECK(padded("red heifer", 6) == "red heifer");
}

TEST_CASE("One is said in the singular, none and several in the plural") {
  CHECK(counted(0, "cow", "cows") == "0 cows");
  CHECK(counted(1, "cow", "cows") == "1 cow");
  CHECK(counted(42, "cow", "cows") == "42 cows");
}

TEST_CASE("A text that is too wide goes on below its first word") {
  const std::string words(70, 'x');
  CHECK(wrapped_behind("  412  ", words + " yyyy zz") == "  412  " + words + "\n       yyyy zz");
  CHECK(wrapped_behind("  412  ", words + " y") == "  412  " + words + " y");
}

TEST_CASE("A word wider than a terminal stands on a line of its own") {
  const std::string path(90, 'p');
  CHECK(wrapped_behind("  ", "at " + path + " now") == "  at\n  " + path + "\n  now");
}

TEST_CASE("Columns are as wide as their widest cell and end without spaces") {
  CHECK(table({{"foot", "count"}, {"LH", "3"}, {"left front", ""}}) ==
        "  foot        count\n  LH          3\n  left front\n");
  CHECK(table({}).empty());
}

}  // namespace evenclaw::cli
