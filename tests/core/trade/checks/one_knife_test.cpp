#include <doctest/doctest.h>

#include "tests/core/trade/told_lines.hpp"

using namespace evenclaw;
using namespace evenclaw::told;

namespace {

Names fired_after(const std::string& line, VisitSoFar so_far) {
  ToldDay day = told_day("412\n" + line);
  day.past.known.so_far = so_far;
  return rules_fired(day.warnings(), false);
}

VisitSoFar bled(int feet) {
  VisitSoFar so_far;
  so_far.feet_bled = feet;
  return so_far;
}

VisitSoFar thin(int cows) {
  VisitSoFar so_far;
  so_far.cows_with_thin_soles = cows;
  return so_far;
}

const Names blood = {"ask blood-drawn-on-several"};
const Names thin_soles = {"ask thin-soles-on-several"};

}  // namespace

TEST_CASE("blood is asked about at the third foot, then when it has doubled") {
  const std::string one = "LH outside blood drawn";
  CHECK(fired_after(one, bled(1)).empty());
  CHECK(fired_after(one, bled(2)) == blood);
  CHECK(fired_after(one, bled(3)).empty());
  CHECK(fired_after(one, bled(4)).empty());
  CHECK(fired_after(one, bled(5)) == blood);
  CHECK(fired_after(one, bled(6)).empty());
}

TEST_CASE("two feet of one cow can bring the third, two claws of a foot count once") {
  CHECK(fired_after("LH outside blood drawn; RH outside blood drawn", bled(1)) == blood);
  CHECK(fired_after("LH outside blood drawn; inside blood drawn; vet", bled(1)).empty());
}

TEST_CASE("thin soles are counted by cows") {
  CHECK(fired_after("both hinds outside thin sole", thin(1)).empty());
  CHECK(fired_after("both hinds outside thin sole", thin(2)) == thin_soles);
  CHECK(fired_after("LH outside thin sole", thin(5)) == thin_soles);
}

TEST_CASE("a cow without the like is not asked about, however many came before") {
  CHECK(fired_after("LH outside bruise", bled(5)).empty());
  CHECK(fired_after("LH outside bruise", thin(5)).empty());
}
