#include "core/api/recording/how_she_left.hpp"

#include <doctest/doctest.h>

using namespace evenclaw;

TEST_CASE("how a cow left is told by its word") {
  CHECK(how_she_left("301 sold", "301", english()) == "sold");
  CHECK(how_she_left("301 died", "301", english()) == "died");
  CHECK(how_she_left("301 verendet", "301", german()) == "verendet");
}

TEST_CASE("that she is gone does not say how") {
  CHECK(how_she_left("301 gone", "301", english()).empty());
  CHECK(how_she_left("301 wrap off", "301", english()).empty());
  CHECK(how_she_left("301 weg", "301", german()).empty());
}

TEST_CASE("what a line says of another cow is not hers") {
  CHECK(how_she_left("300 wrap off; 301 sold", "300", english()).empty());
  CHECK(how_she_left("300 died; 301 sold", "301", english()) == "sold");
  CHECK(how_she_left("300, 301 sold", "301", english()) == "sold");
}
