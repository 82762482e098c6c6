#include "core/api/cow_names.hpp"

#include <doctest/doctest.h>

#include <string>

#include "tests/core/trade/call_line/enciphered.hpp"

using namespace evenclaw;

namespace {

CowSaid one_of_two() {
  return {CowKnown::doubtful, "513", {"531"}, ""};
}

CowSaid without_number(const std::string& looks) {
  return {CowKnown::unnumbered, "", {}, looks};
}

}  // namespace

TEST_CASE("a cow is named in the words of the day and recorded in one form") {
  const Language& other = enciphered::language();
  CHECK(said_as(one_of_two(), english()) == "513 or 531");
  CHECK(said_as(one_of_two(), other) == enciphered::said("513 or 531"));
  CHECK(recorded_as(one_of_two()) == "513 or 531");
  CHECK(said_as(without_number(""), english()) == "no number");
  CHECK(said_as(without_number(""), other) == enciphered::said("no number"));
  CHECK(recorded_as(without_number("")) == "no number");
  CHECK(said_as(without_number("red heifer"), other) == "red heifer");
}

TEST_CASE("whoever types a cow's name is understood as on the call line") {
  struct Row {
    const char* typed;
    const char* recorded;
  };

  constexpr Row rows[] = {{"412", "412"},          {" 0412 ", "412"},
                          {"412?", "412?"},        {"513 or 531", "513 or 531"},
                          {"no tag", "no number"}, {"no number, red heifer", "red heifer"}};
  for (const Row& row : rows) {
    CAPTURE(row.typed);
    CHECK(recorded_as(row.typed, english()) == row.recorded);
  }
  CHECK(recorded_as(enciphered::said("513 or 531"), enciphered::language()) == "513 or 531");
  CHECK(recorded_as(enciphered::said("no tag"), enciphered::language()) == "no number");
}

TEST_CASE("words that are no way to name a cow stay as they were typed") {
  for (const char* typed : {"red heifer", "412 lame LH", "rest fine", ""}) {
    CHECK(recorded_as(typed, english()) == typed);
  }
}
