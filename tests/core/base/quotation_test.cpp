#include "core/base/quotation.hpp"

#include <doctest/doctest.h>

namespace evenclaw {

TEST_CASE("what was said stands between quotes") {
  CHECK(quoted("66 wrap off") == "\"66 wrap off\"");
  CHECK(quoted("") == "\"\"");
}

TEST_CASE("a line that quotes something itself has no doubled quotes") {
  CHECK(quoted("LH other \"cracked wall\"") == "'LH other \"cracked wall\"'");
  CHECK(quoted("\"a\" and \"b\"") == "'\"a\" and \"b\"'");
  CHECK(quoted("half \"open") == "'half \"open'");
}

TEST_CASE("words said in quotes keep theirs and get no second pair") {
  CHECK(quoted("\"black spot\"") == "\"black spot\"");
}

}  // namespace evenclaw
