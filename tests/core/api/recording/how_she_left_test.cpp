#include "core/api/recording/how_she_left.hpp"

#include <doctest/doctest.h>

#include <string>
#include <vector>

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

TEST_CASE("every time a line says that she left is told, in order") {
  using Ways = std::vector<std::string>;
  CHECK(ways_she_left("77 died; 77 sold", "77", english()) == Ways{"died", "sold"});
  CHECK(ways_she_left("77 sold; 412 wrap off; 77 died", "77", english()) == Ways{"sold", "died"});
  CHECK(ways_she_left("77 sold; 412 wrap off; 77 died", "412", english()).empty());
  CHECK(ways_she_left("77, 78 died; 78 gone", "78", english()) == Ways{"died", ""});
  CHECK(ways_she_left("77, 78 died; 78 gone", "77", english()) == Ways{"died"});
}
