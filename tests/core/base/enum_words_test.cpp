#include "core/base/enum_words.hpp"

#include <doctest/doctest.h>

#include "core/base/date.hpp"

namespace evenclaw {

TEST_CASE("every word names its value and every value its word") {
  for (const auto& row : EnumWords<Weekday>::table) {
    CHECK(word_of(row.value) == row.word);
    CHECK(enum_of<Weekday>(row.word) == row.value);
  }
}

TEST_CASE("a word outside the table names nothing") {
  for (const char* word : {"", "mon", "Monday", "monday ", "someday"}) {
    CAPTURE(word);
    CHECK_FALSE(enum_of<Weekday>(word).has_value());
  }
}

TEST_CASE("only enums with a table are worded") {
  enum class Unworded { a };
  static_assert(WordedEnum<Weekday>);
  static_assert(!WordedEnum<Unworded>);
  static_assert(!WordedEnum<int>);
  CHECK(word_of(Weekday::thursday) == "thursday");
}

}  // namespace evenclaw
