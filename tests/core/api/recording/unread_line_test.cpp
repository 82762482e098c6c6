#include "core/api/recording/unread_line.hpp"

#include <doctest/doctest.h>

using namespace evenclaw;

TEST_CASE("a line without a number is asked about by its first words") {
  CHECK(whom_it_may_be_of("red cow wrap off", english()) == "red cow");
  CHECK(whom_it_may_be_of("all wraps off", english()) == "all wraps");
  CHECK(whom_it_may_be_of("the little brown one by the gate kicks", english()) ==
        "the little brown");
  CHECK(whom_it_may_be_of("lame", english()) == "lame");
}

TEST_CASE("what was called beside a crush holds a word of a call") {
  CHECK(holds_a_call_word("all wraps off", english()));
  CHECK(holds_a_call_word("a dozen heifers", english()));
  CHECK_FALSE(holds_a_call_word("quit", english()));
  CHECK_FALSE(holds_a_call_word("and with two", english()));
}
