#include "core/sheets/held_back_ends.hpp"

#include <doctest/doctest.h>

#include <string>

#include "core/sheets/withdrawal_box.hpp"
#include "core/trade/follow_up_rules.hpp"
#include "tests/core/sheets/invented_day.hpp"
#include "tests/core/sheets/sheet_text.hpp"

namespace evenclaw {

namespace {

/// 513 got a spray off label some days ago that states two days of milk and so many of meat; the
/// end of the milk is over, so that no task tells of it. The law asks 7 days and 28.
InventedDay day_with_milk_over(int meat, int days_ago) {
  InventedDay day("Hollow Meadow");
  day.turn("513");
  ActionRow& held = day.did({ActionKind::spray, Foot::lh, Claw::none, "milkmix"});
  held.day = day.input().visit.day - days_ago;
  held.visit = visit_id(day.input().visit.herd, held.day, 1);
  held.withdrawal = WithdrawalKnown::held_back;
  held.milk_till = held.day + 2;
  held.meat_till = held.day + meat;
  held.listed = ProductId{uuid_derived("milkmix")};
  day.input().stated.push_back({held.turn, *held.listed, StatedBy::vet, "Dr Lee"});
  day.input().stated.back().floor = {7 * 24, 28};
  if (meat > days_ago) {
    TaskRow& end = day.task("513", TaskKind::withdrawal_end, Owner::farmer, meat - days_ago);
    end.rule = meat_withdrawal_rule.slug;
    end.words = "last day meat held back: Mon 21 Dec";
    end.visit = held.visit;
  }
  return day;
}

std::string boxes_of(InventedDay& day) {
  return text_of(withdrawal_box(view_of(day.input(), english_wording())));
}

}  // namespace

TEST_CASE("milk the law still holds back leads her ends where what was told of it is over") {
  InventedDay day = day_with_milk_over(28, 4);
  const std::string text = boxes_of(day);
  const std::size_t milk =
      text.find("513  Milk held back up to and with the evening milking of Fri 27 Nov, the law's");
  CHECK_MESSAGE(milk != std::string::npos, text);
  CHECK_MESSAGE(milk < text.find("Last day meat held back: Mon 21 Dec."), text);
}

TEST_CASE("where all that was told is over the law's day keeps her from sale, with what she got") {
  InventedDay day = day_with_milk_over(5, 10);
  const std::string text = boxes_of(day);
  CHECK_MESSAGE(
      holds(text,
            "# MILK AND MEAT: NOT FOR SALE\n"
            "# 513  Meat held back up to and with Sat 12 Dec, the law's floor off label."),
      text);
  CHECK_MESSAGE(holds(text, "Spray (milkmix)"), text);
  CHECK_MESSAGE(!holds(text, "ASK FIRST"), text);
}

TEST_CASE("of a cow who was sold the buyer is told the day of the law") {
  InventedDay day = day_with_milk_over(5, 10);
  day.known("513").left_on = day.input().visit.day - 1;
  day.known("513").left_words = "513 sold";
  const std::string text = boxes_of(day);
  CHECK_MESSAGE(holds(text, "NOT FOR SALE\n# 513  Sold, Mon 23 Nov: tell the buyer.\n"), text);
  CHECK_MESSAGE(holds(text, "Meat held back up to and with Sat 12 Dec"), text);
}

TEST_CASE("an end of which something else may be later is told once, as the earliest") {
  InventedDay day("Hollow Meadow");
  day.turn("513");
  ActionRow& held = day.did({ActionKind::spray, Foot::lh, Claw::none, "slowmix"});
  held.withdrawal = WithdrawalKnown::held_back;
  held.meat_till = held.milk_till = held.day + 5;
  day.turn("513");
  day.did({ActionKind::given, std::nullopt, Claw::none, "penmix"});
  day.did({ActionKind::milk_withheld});
  TaskRow& end = day.task("513", TaskKind::withdrawal_end, Owner::farmer, 5);
  end.rule = meat_withdrawal_rule.slug;
  end.words = "last day meat held back: Sun 29 Nov";
  const std::string text = boxes_of(day);
  CHECK_MESSAGE(holds(text, "Sun 29 Nov at the earliest: not known for medicine given (penmix)"),
                text);
  CHECK_MESSAGE(!holds(text, "Her meat: withdrawal not known"), text);
}

}  // namespace evenclaw
