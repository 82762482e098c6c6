#include "demo/cow.hpp"

#include <doctest/doctest.h>

#include "demo/parameters.hpp"

namespace evenclaw::demo {

namespace {

Farm farm_that_calves(Season season) {
  Farm farm = invent_farm(5, 1, {});
  farm.calves = season;
  return farm;
}

}  // namespace

TEST_CASE("a cow calves again about every thirteen months, dry for eight weeks before, or leaves") {
  const Farm farm = farm_that_calves(Season::all_year);
  int leaving = 0;
  for (int number = 1; number <= 400; ++number) {
    const Cow cow = first_calved(5, farm, number, 100);
    CHECK(lactation_of(cow) == 1);
    CHECK(cow.born < 100 - 80);
    if (cow.left == LeftBecause::end_of_lactation) {
      ++leaving;
      CHECK(cow.leaves > 100);
      CHECK(cow.leaves < 100 + 70);
      continue;
    }
    CHECK(cow.next_calving - 100 >= 46);
    CHECK(cow.next_calving - 100 <= 80);
    CHECK(cow.next_calving - cow.dry_from == 8);
    CHECK(is_dry(cow, cow.dry_from));
    CHECK(!is_dry(cow, cow.dry_from - 1));
  }
  // One in five leaves in her first lactation; 400 cows: SD 8.
  CHECK(leaving > 80 - 32);
  CHECK(leaving < 80 + 32);
}

TEST_CASE("a herd that calves in one season keeps to the year") {
  const Farm farm = farm_that_calves(Season::spring);
  double sum = 0;
  int cows = 0;
  for (int number = 1; number <= 300; ++number) {
    const Cow cow = first_calved(5, farm, number, 0);
    if (cow.next_calving == never) continue;
    sum += cow.next_calving;
    ++cows;
  }
  CHECK(sum / cows == doctest::Approx(52).epsilon(0.02));
}

TEST_CASE("a cow is the same in every telling, and another number is another cow") {
  const Farm farm = farm_that_calves(Season::all_year);
  const Cow cow = first_calved(5, farm, 12, 3);
  const Cow again = first_calved(5, farm, 12, 3);
  const Cow other = first_calved(5, farm, 13, 3);
  CHECK(cow.horn_frailty == again.horn_frailty);
  CHECK(cow.next_calving == again.next_calving);
  CHECK(cow.horn_frailty != other.horn_frailty);
}

TEST_CASE("horn suffers most two to four months after calving, and more in later lactations") {
  const Farm farm = farm_that_calves(Season::all_year);
  Cow cow = first_calved(5, farm, 12, 0);
  cow.dry_from = 48;
  CHECK(horn_rate(cow, 10) > horn_rate(cow, 3));
  CHECK(horn_rate(cow, 10) > horn_rate(cow, 30));
  CHECK(horn_rate(cow, 50) < horn_rate(cow, 30));
  const double first = horn_rate(cow, 10);
  cow.calvings = {0, 55, 110, 165};
  cow.dry_from = never;
  CHECK(horn_rate(cow, 175) / first == doctest::Approx(1.8 / 0.65));
}

TEST_CASE("dermatitis is caught most in the first lactation, late in it above all") {
  const Farm farm = farm_that_calves(Season::all_year);
  Cow cow = first_calved(5, farm, 12, 0);
  const double early = skin_rate(cow, 5);
  CHECK(skin_rate(cow, 20) > early);
  cow.calvings = {0, 55};
  CHECK(skin_rate(cow, 60) < early);
  cow.calvings = {0, 55, 110};
  CHECK(skin_rate(cow, 120) < cow.skin_frailty);
}

}  // namespace evenclaw::demo
