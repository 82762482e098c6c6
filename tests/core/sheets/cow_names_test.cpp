#include "core/sheets/cow_names.hpp"

#include <doctest/doctest.h>

#include <algorithm>

namespace evenclaw {

namespace {

CowRow cow(const std::string& name) {
  CowRow row;
  row.cow = CowId{uuid_derived(name)};
  row.number = name;
  return row;
}

}  // namespace

TEST_CASE("numbers sort as people sort them") {
  std::vector<std::string> numbers = {"1012", "10a", "9", "0412", "77", "10"};
  std::sort(numbers.begin(), numbers.end(), number_before);
  CHECK(numbers == std::vector<std::string>{"9", "10", "10a", "77", "0412", "1012"});
}

TEST_CASE("cows without a number stand last, by what they look like") {
  CowRow brown = cow("a");
  brown.number = "";
  brown.looks = "brown heifer";
  CowRow white = cow("b");
  white.number = "";
  white.looks = "white star";
  const CowNames names(std::vector{cow("412"), white, brown}, english_wording());
  CHECK(names.before(cow("412").cow, brown.cow));
  CHECK_FALSE(names.before(brown.cow, cow("412").cow));
  CHECK(names.before(brown.cow, white.cow));
  CHECK(names.in_text(brown.cow) == "no number (brown heifer)");
}

TEST_CASE("a number in doubt is shown as doubtful, with what was said") {
  CowRow row = cow("513");
  row.known = CowKnown::doubtful;
  row.number = "";
  row.number_said = "513 or 531";
  const CowNames names(std::vector{row}, english_wording());
  CHECK(names.label(row.cow) == "513 or 531?");
}

TEST_CASE("a cow nobody told of has no number and is before none with one") {
  const CowNames names(std::vector{cow("412")}, english_wording());
  CHECK(names.label(cow("x").cow) == "?");
  CHECK(names.beside_label(cow("x").cow) == "no number");
  CHECK_FALSE(names.before(cow("x").cow, cow("412").cow));
}

}  // namespace evenclaw
