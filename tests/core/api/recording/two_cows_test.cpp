#include "core/api/recording/two_cows.hpp"

#include <doctest/doctest.h>

using namespace evenclaw;

namespace {

std::string told(std::string_view line) {
  std::string all;
  for (const PartOfLine& part : parts_of_cows(line, english())) {
    all += part.number + '=' + part.words + '|';
  }
  return all;
}

}  // namespace

TEST_CASE("what a line says of each cow stands behind her number") {
  CHECK(told("203 LH SU, 204 RH SU") == "203=203 LH SU|204=204 RH SU|");
  CHECK(told("0203 LH fine; 204 RH fine and 205 LH SU") ==
        "203=0203 LH fine|204=204 RH fine|205=205 LH SU|");
}

TEST_CASE("a time, a length or a list of numbers is no second cow") {
  CHECK(told("203 LH SU; see again, 28 d").empty());
  CHECK(told("203 LH outside length, 78 mm").empty());
  CHECK(told("203, 204 wraps off").empty());
  CHECK(told("LH SU, 204 RH SU").empty());
}

TEST_CASE("what a line tells of several is told of each by itself") {
  CHECK(told_of_one("883 and 884 LH DD", "884", english()) == "884 LH DD");
  CHECK(told_of_one("300 wrap off; 301 gone", "301", english()) == "301 gone");
  CHECK(told_of_one("300 wrap off", "300", english()) == "300 wrap off");
  CHECK_FALSE(part_of_one("300 wrap off", "300", english()));
}
