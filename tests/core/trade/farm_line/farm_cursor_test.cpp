#include "core/trade/farm_line/farm_cursor.hpp"

#include <doctest/doctest.h>

#include <string>

namespace evenclaw {

TEST_CASE("a number is digits or the word for them") {
  FarmCursor cursor("412 two", english(), 1);
  CHECK(cursor.take_digits(15) == "412");
  CHECK(cursor.take_whole() == 2);
  CHECK(cursor.at_end());
}

TEST_CASE("a number with a point, or with more digits than fit, is not taken as a whole one") {
  FarmCursor point("2.5", english(), 1);
  CHECK_FALSE(point.take_whole());
  FarmCursor longer("1234567", english(), 1);
  CHECK_FALSE(longer.take_whole(6));
  CHECK(longer.place() == 0);
}

TEST_CASE("legs are named as on the call line") {
  FarmCursor cursor("LH RH", english(), 1);
  CHECK(cursor.take_feet() == hind_feet);
  FarmCursor both("both hinds", english(), 1);
  CHECK(both.take_feet() == hind_feet);
  FarmCursor none("412", english(), 1);
  CHECK(none.take_feet().empty());
}

TEST_CASE("free words go to the next comma, and quotes keep one inside") {
  FarmCursor cursor("parlour exit, \"yard, old\" side", english(), 1);
  CHECK(cursor.take_words() == "parlour exit");
  cursor.skip_separators();
  CHECK(cursor.take_words() == "yard, old side");
}

TEST_CASE("a refusal names line, column and word") {
  FarmCursor cursor("scale zz", english(), 7);
  REQUIRE(cursor.take(FarmWord::scale));
  const Fault fault = cursor.refused("which scale is it?", "say it");
  CHECK(fault.line == 7);
  CHECK(fault.column == 7);
  CHECK(fault.token == "zz");
}

TEST_CASE("a line that is no text or far too long is not read") {
  CHECK(FarmCursor("412\x01", english(), 1).unreadable()->slug == "call-not-understood");
  const std::string longest(longest_farm_line + 1, '4');
  CHECK(FarmCursor(longest, english(), 1).unreadable()->slug == "line-too-long");
  CHECK_FALSE(FarmCursor("412", english(), 1).unreadable());
}

}  // namespace evenclaw
