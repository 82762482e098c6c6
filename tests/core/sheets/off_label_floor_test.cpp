#include "core/sheets/off_label_floor.hpp"

#include <doctest/doctest.h>

#include <string>

#include "tests/core/sheets/invented_day.hpp"

namespace evenclaw {

namespace {

/// 513 got a spray of which the list states two days of milk and five of meat.
InventedDay day_with_floor(const LeastNotReached& floor) {
  InventedDay day("Hollow Meadow");
  day.turn("513");
  ActionRow& held = day.did({ActionKind::spray, Foot::lh, Claw::none, "strongmix"});
  held.withdrawal = WithdrawalKnown::held_back;
  held.milk_till = held.day + 2;
  held.meat_till = held.day + 5;
  held.listed = ProductId{uuid_derived("strongmix")};
  day.input().stated.push_back({held.turn, *held.listed, StatedBy::vet, "Dr Lee"});
  day.input().stated.back().floor = floor;
  return day;
}

FloorEnds ends_on(InventedDay& day, int days_later) {
  day.input().printed = day.input().visit.day + days_later;
  const VisitView view = view_of(day.input(), english_wording());
  return floor_ends_of(view, {&day.rows().actions.front()});
}

}  // namespace

TEST_CASE("the law's floor is counted from the day it was given, each half until it has passed") {
  InventedDay day = day_with_floor({7 * 24, 28});
  const Day given = day.input().visit.day;
  CHECK(ends_on(day, 0).milk == MilkEnd{given + 7, Milking::evening});
  CHECK(ends_on(day, 0).meat == given + 28);
  CHECK(ends_on(day, 7).milk);
  CHECK_FALSE(ends_on(day, 8).milk);
  CHECK(ends_on(day, 28).meat);
  CHECK_FALSE(ends_on(day, 29).is_open());
}

TEST_CASE("where nothing stated lies below the law's floor there is none") {
  InventedDay day = day_with_floor({});
  CHECK_FALSE(ends_on(day, 0).is_open());
}

TEST_CASE("of each half that lies below the floor is known what the law asks at least") {
  Product product;
  product.labelled = Labelled::no;
  product.milk = WithdrawalStated{2, WithdrawalUnit::days};
  product.meat_days = 28;
  CHECK(least_not_reached(product, "").milk_hours == 7 * 24);
  CHECK_FALSE(least_not_reached(product, "").meat_days);
  product.milk = std::nullopt;
  product.meat_days = 0;
  CHECK(least_not_reached(product, "").meat_days == 28);
  CHECK_FALSE(least_not_reached(product, "").milk_hours);
  product.labelled = Labelled::not_known;
  CHECK_FALSE(least_not_reached(product, "").meat_days);
}

TEST_CASE("in the spreadsheet the ends are not before the law's floor, also once it has passed") {
  for (const int days_later : {0, 60}) {
    InventedDay day = day_with_floor({7 * 24, 28});
    day.input().printed = day.input().visit.day + days_later;
    const Day given = day.input().visit.day;
    const VisitView view = view_of(day.input(), english_wording());
    const ActionRow& row = day.rows().actions.front();
    const ActionRow held = with_lawful_ends(view, {&row}, {}, row);
    CHECK(held.milk_till == given + 7);
    CHECK(held.meat_till == given + 28);
    day.input().stated.back().floor = {};
    CHECK(with_lawful_ends(view, {&row}, {}, row).meat_till == given + 5);
  }
}

TEST_CASE("the floor is told with what the law asks and its day") {
  InventedDay day = day_with_floor({std::nullopt, 28});
  const VisitView view = view_of(day.input(), english_wording());
  const ActionRow& row = day.rows().actions.front();
  CHECK(floor_words(view, row, floor_ends_of(view, {&row})) ==
        "off label the law's floor is at least 28 days meat (meat held back up to and with Tue 22 "
        "Dec); ask the vet before anything is sold");
}

}  // namespace evenclaw
