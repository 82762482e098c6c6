#include "core/paper/page_words.hpp"

#include <doctest/doctest.h>

namespace evenclaw {

TEST_CASE("the number of a page is said in the language of the document") {
  CHECK(page_number("en", 2, 3) == "page 2 of 3");
  CHECK(page_number("de", 2, 3) == "Seite 2 von 3");
}

TEST_CASE("a language without words of its own still tells how many pages there are") {
  CHECK(page_number("fi", 2, 3) == "2 / 3");
}

}  // namespace evenclaw
