#include "core/sheets/withdrawal_known.hpp"

#include <doctest/doctest.h>

#include "core/sheets/stay_near.hpp"
#include "core/sheets/vets_page.hpp"
#include "core/sheets/withdrawal_box.hpp"
#include "tests/core/sheets/invented_day.hpp"
#include "tests/core/sheets/sheet_text.hpp"

namespace evenclaw {

namespace {

/// 513 was given something of the list, which states milk or meat or both.
InventedDay day_with_listed(WithdrawalKnown withdrawal, bool states_milk, bool states_meat) {
  InventedDay day("Hollow Meadow");
  day.turn("513");
  ActionRow& row = day.did({ActionKind::given, std::nullopt, Claw::none, "slowmix"});
  row.withdrawal = withdrawal;
  row.listed = ProductId{uuid_derived("slowmix")};
  if (withdrawal == WithdrawalKnown::held_back) row.milk_till = row.day + 2;
  day.input().stated.push_back(
      {row.turn, *row.listed, StatedBy::label, "", states_milk, states_meat});
  return day;
}

std::string box_of(InventedDay& day) {
  return text_of(withdrawal_box(view_of(day.input(), english_wording())));
}

std::string vets_of(InventedDay& day) {
  return text_of(vets_page(view_of(day.input(), english_wording())));
}

std::string near_of(InventedDay& day) {
  return text_of(stay_near(view_of(day.input(), english_wording())));
}

constexpr const char* meat_asked =
    "Her meat: withdrawal not known. Ask the vet before she goes for slaughter.";

}  // namespace

TEST_CASE("of a product of which only the milk is listed the meat is told as not known") {
  InventedDay day = day_with_listed(WithdrawalKnown::held_back, true, false);
  day.task("513", TaskKind::withdrawal_end, Owner::farmer, 2);
  CHECK(holds(box_of(day), meat_asked));
  CHECK_FALSE(holds(box_of(day), "Her milk: withdrawal not known"));
  CHECK(holds(vets_of(day), "milk to Thu 26 Nov; meat withdrawal not known"));
  CHECK(holds(near_of(day), "meat withdrawal not known"));
}

TEST_CASE("what was told by mouth fills the half the list leaves open") {
  InventedDay day = day_with_listed(WithdrawalKnown::held_back, true, false);
  day.did({ActionKind::meat_withheld, std::nullopt, Claw::none, "", 9});
  day.task("513", TaskKind::withdrawal_end, Owner::farmer, 2);
  CHECK_FALSE(holds(box_of(day), meat_asked));
  CHECK_FALSE(holds(vets_of(day), "not known"));
}

TEST_CASE("a product of which both halves are listed leaves nothing to ask") {
  InventedDay day = day_with_listed(WithdrawalKnown::held_back, true, true);
  day.task("513", TaskKind::withdrawal_end, Owner::farmer, 2);
  CHECK_FALSE(holds(box_of(day), "not known"));
  CHECK_FALSE(holds(near_of(day), "not known"));
}

TEST_CASE("no milk withdrawal listed and no word of the meat is asked about, with the half named") {
  InventedDay day = day_with_listed(WithdrawalKnown::not_known, true, false);
  CHECK(holds(box_of(day), "# 513  Medicine given (slowmix), meat withdrawal not known.\n"));
  CHECK(holds(vets_of(day), "meat withdrawal not known"));
  CHECK_FALSE(holds(vets_of(day), "not recorded"));
}

TEST_CASE("once the milk is free again the meat nobody stated is still asked about") {
  InventedDay day = day_with_listed(WithdrawalKnown::held_back, true, false);
  CHECK(holds(box_of(day), "# 513  Medicine given (slowmix), meat withdrawal not known.\n"));
}

TEST_CASE("of two medicines each can leave another half open") {
  InventedDay day = day_with_listed(WithdrawalKnown::held_back, true, false);
  ActionRow& row = day.did({ActionKind::spray, Foot::lh, Claw::none, "blue"});
  row.withdrawal = WithdrawalKnown::held_back;
  row.listed = ProductId{uuid_derived("blue")};
  row.meat_till = row.day + 5;
  day.input().stated.push_back({row.turn, *row.listed, StatedBy::label, "", false, true});
  day.task("513", TaskKind::withdrawal_end, Owner::farmer, 2);
  CHECK(holds(box_of(day), "Her milk: withdrawal not known. Ask the vet before it is sold.\n"));
  CHECK(holds(box_of(day), meat_asked));
}

}  // namespace evenclaw
