#include "core/sheets/withdrawal_box.hpp"

#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "core/trade/follow_up_rules.hpp"
#include "tests/core/sheets/invented_day.hpp"
#include "tests/core/sheets/sheet_text.hpp"

namespace evenclaw {

namespace {

std::string withdrawal_box_text(const VisitSheetInput& input) {
  return text_of(withdrawal_box(view_of(input, english_wording())));
}

/// 513 got a spray off label that states so many days of milk and meat, where the law asks 7
/// and 28.
InventedDay off_label_day(int milk, int meat, int days_ago) {
  InventedDay day("Hollow Meadow");
  day.turn("513");
  ActionRow& held = day.did({ActionKind::spray, Foot::lh, Claw::none, "strongmix"});
  held.day = day.input().visit.day - days_ago;
  held.withdrawal = milk + meat > 0 ? WithdrawalKnown::held_back : WithdrawalKnown::none;
  if (milk > 0) held.milk_till = held.day + milk;
  if (meat > 0) held.meat_till = held.day + meat;
  held.listed = ProductId{uuid_derived("strongmix")};
  day.input().stated.push_back({held.turn, *held.listed, StatedBy::vet, "Dr Lee"});
  day.input().stated.back().floor = {7 * 24, 28};
  if (milk > 0) {
    day.task("513", TaskKind::withdrawal_end, Owner::farmer, milk - days_ago).rule =
        milk_withdrawal_rule.slug;
  }
  if (meat > 0) {
    day.task("513", TaskKind::withdrawal_end, Owner::farmer, meat - days_ago).rule =
        meat_withdrawal_rule.slug;
  }
  return day;
}

}  // namespace

TEST_CASE("an end off label below the law's floor is told with the floor, and is not over before") {
  const struct {
    int milk;
    int meat;
    int days_ago;
    const char* title;
    const char* floor;
    bool is_over_told;
  } rows[] = {
      {2, 5, 0, "# MILK AND MEAT: NOT FOR SALE", "at least 7 days milk and 28 days meat (", false},
      {0, 0, 0, "# MILK AND MEAT: NOT FOR SALE", "at least 7 days milk and 28 days meat (", false},
      {2, 5, 7, "# MILK AND MEAT: NOT FOR SALE", "at least 7 days milk and 28 days meat (", false},
      {2, 5, 8, "# MILK AND MEAT: NOT FOR SALE",
       "at least 28 days meat (meat held back up to and with Mon 14 Dec)", true},
      {2, 5, 28, "# MILK AND MEAT: NOT FOR SALE", "at least 28 days meat", true},
      {2, 5, 29, "Milk and meat: the time is over", "", true},
  };

  for (const auto& row : rows) {
    InventedDay day = off_label_day(row.milk, row.meat, row.days_ago);
    const VisitView view = view_of(day.input(), english_wording());
    const std::string text = text_of(withdrawal_box(view)) + text_of(withdrawals_over(view));
    CHECK_MESSAGE(holds(text, row.title), text);
    CHECK_MESSAGE(holds(text, row.floor), text);
    CHECK_MESSAGE(holds(text, "sk the vet before anything is sold") == (*row.floor != 0), text);
    CHECK_MESSAGE(holds(text, "ime is over") == row.is_over_told, text);
  }
}

TEST_CASE("off label the later day of the law is the end, and what was told stands beside it") {
  InventedDay day = off_label_day(2, 5, 0);
  const std::string text = withdrawal_box_text(day.input());
  const std::size_t floor =
      text.find("Milk held back up to and with the evening milking of Tue 1 Dec");
  const std::size_t told = text.find("Told: ");
  CHECK_MESSAGE(floor < told, text);
  CHECK_MESSAGE(told != std::string::npos, text);
  CHECK_MESSAGE(holds(text, "the law's floor off label"), text);
}

TEST_CASE("the law's floor of a cow who was sold is the buyer's to know, of a dead one nobody's") {
  for (const auto& [told, is_told] : {std::pair("513 sold", true), std::pair("513 died", false)}) {
    InventedDay day = off_label_day(2, 5, 10);
    day.known("513").left_on = day.input().visit.day - 1;
    day.known("513").left_words = told;
    const std::string text = withdrawal_box_text(day.input());
    CHECK_MESSAGE(holds(text, "at least 28 days meat") == is_told, text);
    CHECK_MESSAGE(holds(text, "tell the buyer") == is_told, text);
  }
}

TEST_CASE("a later end told by mouth reaches the law's floor") {
  InventedDay day = off_label_day(2, 5, 0);
  ActionRow& told = day.did({ActionKind::withheld, std::nullopt, Claw::none, "", 28});
  told.milk_till = told.meat_till = day.input().visit.day + 28;
  CHECK_FALSE(holds(withdrawal_box_text(day.input()), "law's floor"));
}

TEST_CASE("sprays and pastes are listed with the warning that no withdrawal was recorded") {
  InventedDay day("Hollow Meadow");
  for (const char* number : {"513", "77"}) {
    day.turn(number);
    day.did({ActionKind::spray, Foot::lh, Claw::none, "blue"});
    day.did({ActionKind::spray, Foot::rh, Claw::none, "blue"});
  }
  const std::string text = withdrawal_box_text(day.input());
  CHECK(
      holds(text, "# MILK AND MEAT: ASK FIRST\n# 77 and 513  Spray (blue).\n# No withdrawal time"));
  CHECK_FALSE(holds(withdrawal_box_text(day_with_nothing_found()), "MILK AND MEAT"));
}

TEST_CASE("cow, end, product, direction and mark stand before what nobody stated") {
  InventedDay day("Hollow Meadow");
  day.turn("513");
  ActionRow& held = day.did({ActionKind::spray, Foot::lh, Claw::none, "slowmix"});
  held.withdrawal = WithdrawalKnown::held_back;
  held.directed_by = ByWhom::vet;
  day.did({ActionKind::marked});
  TaskRow& task = day.task("513", TaskKind::withdrawal_end, Owner::farmer, 2);
  task.words = "last milk held back: Thu 26 Nov evening; marked with paint";
  day.turn("77");
  day.did({ActionKind::paste, Foot::rh, Claw::none, "tar"});
  const std::string text = withdrawal_box_text(day.input());
  CHECK(holds(text,
              "# MILK AND MEAT: NOT FOR SALE\n"
              "# 513  Last milk held back: Thu 26 Nov evening; marked with paint.\n"
              "#      Spray (slowmix), ordered by the vet.\n"
              "# The farm keeps milk and meat back as"));
  CHECK(holds(text, "# MILK AND MEAT: ASK FIRST\n# 77  Paste (tar).\n# No withdrawal time"));
}

TEST_CASE("an end is told to be the earliest where of something else she got none is known") {
  for (const int days : {2, -2}) {
    InventedDay day("Hollow Meadow");
    day.turn("513");
    day.did({ActionKind::paste, Foot::lh, Claw::none, "tar"});
    ActionRow& held = day.did({ActionKind::injected, std::nullopt, Claw::none, "penmix"});
    held.withdrawal = WithdrawalKnown::held_back;
    held.milk_till = held.meat_till = held.day + days;
    TaskRow& task = day.task("513", TaskKind::withdrawal_end, Owner::farmer, days);
    task.words = "last milk held back: Thu 26 Nov evening; marked with paint";
    const std::string text = withdrawal_box_text(day.input());
    CHECK_MESSAGE(holds(text,
                        "# 513  Last milk held back: Thu 26 Nov evening at the earliest: not known "
                        "for paste (tar), ask first; marked with paint.\n"),
                  text);
    CHECK_MESSAGE(!holds(text, "ime is over"), text);
  }
}

TEST_CASE("who stated the time is told, or that nobody said") {
  const struct {
    StatedBy by;
    const char* vet;
    const char* told;
  } rows[] = {
      {StatedBy::label, "", "Spray (slowmix), time as its label states."},
      {StatedBy::vet, "Dr Moor", "Spray (slowmix), time as the vet states and ordered by Dr Moor."},
      {StatedBy::not_said, "Dr Moor", "Spray (slowmix), ordered by Dr Moor."},
      {StatedBy::not_said, "", "Spray (slowmix), nobody said who ordered it."}};

  for (const auto& row : rows) {
    InventedDay day("Hollow Meadow");
    day.turn("513");
    ActionRow& held = day.did({ActionKind::spray, Foot::lh, Claw::none, "slowmix"});
    held.withdrawal = WithdrawalKnown::held_back;
    held.listed = ProductId{uuid_derived("slowmix")};
    day.input().stated.push_back({held.turn, *held.listed, row.by, row.vet});
    day.task("513", TaskKind::withdrawal_end, Owner::farmer, 2);
    CHECK_MESSAGE(holds(withdrawal_box_text(day.input()), row.told), row.told);
  }
}

TEST_CASE("that she is marked is asked for where nobody called a mark") {
  InventedDay day("Hollow Meadow");
  day.turn("513");
  day.task("513", TaskKind::withdrawal_end, Owner::farmer, 2);
  CHECK(holds(withdrawal_box_text(day.input()), "Nobody said that she is marked."));
  day.did({ActionKind::marked});
  CHECK_FALSE(holds(withdrawal_box_text(day.input()), "Nobody said that she is marked."));
}

TEST_CASE("an end told by mouth names what was given") {
  InventedDay day("Hollow Meadow");
  day.turn("513");
  day.did({ActionKind::pain_relief_given});
  day.did({ActionKind::withheld, std::nullopt, Claw::none, "", 4});
  day.task("513", TaskKind::withdrawal_end, Owner::farmer, 4);
  const std::string text = withdrawal_box_text(day.input());
  CHECK(holds(text, "#      Pain relief given, nobody said who ordered it.\n"));
  CHECK_FALSE(holds(text, "Pain relief given."));
}

TEST_CASE("of a cow with her meat alone held back it is told that nobody spoke of her milk") {
  struct Case {
    const char* name;
    void (*call)(InventedDay&);
    bool asked;
  };

  const Case rows[] = {
      {"meat", [](InventedDay& day) { day.did({ActionKind::meat_withheld}); }, true},
      {"milk", [](InventedDay& day) { day.did({ActionKind::milk_withheld}); }, false},
      {"both at once", [](InventedDay& day) { day.did({ActionKind::withheld}); }, false},
      {"meat, then milk",
       [](InventedDay& day) {
         day.did({ActionKind::meat_withheld});
         day.did({ActionKind::milk_withheld});
       },
       false},
      {"meat, and a product of the list",
       [](InventedDay& day) {
         day.did({ActionKind::meat_withheld});
         day.did({ActionKind::spray, Foot::lh, Claw::none, "slowmix"}).withdrawal =
             WithdrawalKnown::none;
       },
       true}};

  for (const Case& row : rows) {
    InventedDay day("Hollow Meadow");
    day.turn("513");
    day.did({ActionKind::paste, Foot::lh, Claw::none, "tar"});
    row.call(day);
    day.task("513", TaskKind::withdrawal_end, Owner::farmer, 2);
    CHECK_MESSAGE(
        holds(withdrawal_box_text(day.input()),
              "Her milk: withdrawal not known. Ask the vet before it is sold.") == row.asked,
        row.name);
  }
}

TEST_CASE("of a cow who left the box tells what whoever has her now must know, until it is over") {
  const struct {
    const char* told;
    const char* whom;
    bool milk;
    bool meat;
  } rows[] = {
      {"513 sold", "Sold, Mon 23 Nov: tell the buyer.", true, true},
      {"513 verkauft", "Sold, Mon 23 Nov: tell the buyer.", true, true},
      {"513 culled", "Gone for slaughter, Mon 23 Nov: tell the slaughterhouse.", false, true},
      {"513 gone", "Left the herd, Mon 23 Nov: tell whoever has her now.", true, true},
      {"513 sold, 77 died", "Left the herd, Mon 23 Nov: tell whoever has her now.", true, true},
      {"513 died", "MILK AND MEAT", false, false},
  };

  for (const auto& row : rows) {
    InventedDay day("Hollow Meadow");
    day.turn("77").reason = Reason::routine;
    day.known("513").left_on = day.input().visit.day - 1;
    day.known("513").left_words = row.told;
    TaskRow& milk = day.task("513", TaskKind::withdrawal_end, Owner::farmer, 2);
    milk.rule = milk_withdrawal_rule.slug;
    milk.words = "last milk held back: Thu 26 Nov evening";
    TaskRow& meat = day.task("513", TaskKind::withdrawal_end, Owner::farmer, 9);
    meat.rule = meat_withdrawal_rule.slug;
    meat.words = "last day meat held back: Thu 3 Dec";
    const std::string text = withdrawal_box_text(day.input());
    CHECK_MESSAGE(holds(text, row.whom) == (row.milk || row.meat), row.told << text);
    CHECK_MESSAGE(holds(text, "Last milk held back") == row.milk, row.told << text);
    CHECK_MESSAGE(holds(text, "Last day meat held back") == row.meat, row.told << text);
    CHECK_FALSE(holds(text, "Nobody said that she is marked"));
    day.input().printed = day.input().visit.day + 10;
    CHECK_FALSE(holds(withdrawal_box_text(day.input()), "MILK AND MEAT"));
  }
}

TEST_CASE("what nobody stated of a cow who was sold is asked first, for the buyer") {
  InventedDay day("Hollow Meadow");
  day.turn("513");
  day.did({ActionKind::spray, Foot::lh, Claw::none, "blue"});
  day.known("513").left_on = day.input().visit.day;
  day.known("513").left_words = "513 sold";
  const std::string text = withdrawal_box_text(day.input());
  CHECK_MESSAGE(holds(text, "# 513  Sold, Tue 24 Nov: tell the buyer.\n"), text);
  CHECK_MESSAGE(holds(text, "Spray (blue).\n"), text);
}

TEST_CASE("of a cow with her milk alone held back it is told that nobody spoke of her meat") {
  const auto told = [](ActionKind of_meat) {
    InventedDay day("Hollow Meadow");
    day.turn("513");
    day.did({ActionKind::given, std::nullopt, Claw::none, "penstrep"});
    day.did({ActionKind::milk_withheld});
    if (of_meat != ActionKind::given) day.did({of_meat});
    day.task("513", TaskKind::withdrawal_end, Owner::farmer, 2);
    return holds(withdrawal_box_text(day.input()),
                 "Her meat: withdrawal not known. Ask the vet before she goes for slaughter.");
  };
  CHECK(told(ActionKind::given));
  CHECK_FALSE(told(ActionKind::meat_withheld));
  CHECK_FALSE(told(ActionKind::no_withdrawal));
}

TEST_CASE("only what stands below cows held back has a line of its own to ask first") {
  InventedDay day("Hollow Meadow");
  day.turn("77");
  day.did({ActionKind::paste, Foot::rh, Claw::none, "tar"});
  CHECK_FALSE(holds(withdrawal_box_text(day.input()), "Ask first"));
}

TEST_CASE("the product of an earlier visit stands behind its end that is still open") {
  InventedDay day("Hollow Meadow");
  day.turn("513");
  ActionRow held = day.did({ActionKind::spray, Foot::lh, Claw::none, "slowmix"});
  day.rows().actions.clear();
  held.withdrawal = WithdrawalKnown::held_back;
  held.visit = visit_id(day.input().visit.herd, day.input().visit.day - 7, 1);
  day.rows().actions.push_back(held);
  day.task("513", TaskKind::withdrawal_end, Owner::farmer, 2).visit = held.visit;
  CHECK(holds(withdrawal_box_text(day.input()), "Spray (slowmix), nobody said"));
}

TEST_CASE("what was given without a name, or by the vet's plan, is asked about too") {
  InventedDay day("Hollow Meadow");
  day.turn("513");
  day.did({ActionKind::pain_relief_given});
  day.did({ActionKind::vet_plan, Foot::lh});
  const std::string text = withdrawal_box_text(day.input());
  CHECK(holds(text, "# 513  Pain relief given.\n#      Treated by the vet's plan.\n"));
}

TEST_CASE(
    "the vet's plan is the direction of what was given by it, and is not asked about besides") {
  InventedDay day("Hollow Meadow");
  day.turn("513");
  day.did({ActionKind::vet_plan, Foot::lh});
  day.did({ActionKind::injected, std::nullopt, Claw::none, "slowmix"}).withdrawal =
      WithdrawalKnown::held_back;
  day.task("513", TaskKind::withdrawal_end, Owner::farmer, 2);
  const std::string text = withdrawal_box_text(day.input());
  CHECK(holds(text, "#      Injected (slowmix).\n#      Treated by the vet's plan.\n"));
  CHECK_FALSE(holds(text, "MILK AND MEAT: ASK FIRST"));
}

TEST_CASE("what was given by the vet's plan is asked about whatever was put on her feet") {
  for (const Foot foot : {Foot::lh, Foot::rh}) {
    InventedDay day("Hollow Meadow");
    day.turn("513");
    day.did({ActionKind::vet_plan, Foot::lh});
    day.did({ActionKind::spray, foot, Claw::none, "bluemix"}).withdrawal = WithdrawalKnown::none;
    CHECK(holds(withdrawal_box_text(day.input()), "# 513  Treated by the vet's plan.\n"));
  }
}

TEST_CASE("a spray with a known time does not stand for pain relief of which nobody said any") {
  InventedDay day("Hollow Meadow");
  day.turn("513");
  day.did({ActionKind::spray, Foot::lh, Claw::none, "plainmix"}).withdrawal = WithdrawalKnown::none;
  day.did({ActionKind::pain_relief_given});
  CHECK(holds(withdrawal_box_text(day.input()), "# 513  Pain relief given.\n"));
}

TEST_CASE("an end that is over says so") {
  InventedDay day("Hollow Meadow");
  day.turn("513");
  day.task("513", TaskKind::withdrawal_end, Owner::farmer, -2).rule = milk_withdrawal_rule.slug;
  day.task("513", TaskKind::withdrawal_end, Owner::farmer, 2).rule = meat_withdrawal_rule.slug;
  CHECK(holds(withdrawal_box_text(day.input()), ", its time is over."));
}

TEST_CASE("the end of her milk stands before that of her meat, whichever comes first") {
  for (const int milk : {1, 9}) {
    InventedDay day("Hollow Meadow");
    day.turn("513");
    TaskRow& meat = day.task("513", TaskKind::withdrawal_end, Owner::farmer, 5);
    meat.rule = meat_withdrawal_rule.slug;
    meat.words = "last day meat held back";
    TaskRow& end = day.task("513", TaskKind::withdrawal_end, Owner::farmer, milk);
    end.rule = milk_withdrawal_rule.slug;
    end.words = "last milk held back";
    const std::string text = withdrawal_box_text(day.input());
    CHECK_MESSAGE(text.find("Last milk") < text.find("Last day meat"), text);
  }
}

TEST_CASE("of many cows that got the same the words tell the numbers, of few they stand large") {
  InventedDay day("Hollow Meadow");
  for (int number = 101; number <= 107; ++number) {
    day.turn(std::to_string(number));
    day.did({ActionKind::spray, Foot::lh, Claw::none, "blue"});
  }
  CHECK(holds(withdrawal_box_text(day.input()), "# Spray (blue): 101, 102, 103, 104, 105, 106"));
}

TEST_CASE("of two ends of her meat the later is told alone") {
  InventedDay day("Hollow Meadow");
  day.turn("513");
  for (const int days : {0, 28}) {
    TaskRow& end = day.task("513", TaskKind::withdrawal_end, Owner::farmer, days);
    end.rule = meat_withdrawal_rule.slug;
    end.words = "meat held back for days: " + std::to_string(days);
  }
  const std::string text = withdrawal_box_text(day.input());
  CHECK(holds(text, "days: 28"));
  CHECK_FALSE(holds(text, "days: 0"));
}

TEST_CASE("of two ends of her milk on one day the evening milking is told") {
  InventedDay day("Hollow Meadow");
  day.turn("513");
  for (const char* milking : {"evening", "morning"}) {
    TaskRow& end = day.task("513", TaskKind::withdrawal_end, Owner::farmer, 2);
    end.rule = milk_withdrawal_rule.slug;
    end.words = std::string("last milk held back: Thu 26 Nov ") + milking;
  }
  const std::string text = withdrawal_box_text(day.input());
  CHECK(holds(text, "Thu 26 Nov evening"));
  CHECK_FALSE(holds(text, "morning"));
}

TEST_CASE("a cow whose milk is over and whose meat nobody knows is to be asked of") {
  InventedDay day("Hollow Meadow");
  day.turn("513");
  day.did({ActionKind::milk_withheld});
  day.task("513", TaskKind::withdrawal_end, Owner::farmer, -2);
  const std::string text = withdrawal_box_text(day.input());
  CHECK_FALSE(holds(text, "Its time is over"));
  CHECK(holds(text, "Her meat: withdrawal not known."));
  CHECK(holds(text, "# MILK AND MEAT: ASK FIRST\n# 513 "));
}

TEST_CASE("a cow whose ends are all over does not stand among those not for sale") {
  InventedDay day("Hollow Meadow");
  day.turn("513");
  day.task("513", TaskKind::withdrawal_end, Owner::farmer, -2);
  const auto over_text = [&] {
    return text_of(withdrawals_over(view_of(day.input(), english_wording())));
  };
  CHECK_FALSE(holds(withdrawal_box_text(day.input()), "513"));
  CHECK(holds(over_text(), "Milk and meat: the time is over\n"));
  day.turn("77");
  day.task("77", TaskKind::withdrawal_end, Owner::farmer, 4);
  const std::string text = withdrawal_box_text(day.input());
  CHECK(holds(text, "# MILK AND MEAT: NOT FOR SALE\n# 77 "));
  CHECK_FALSE(holds(text, "513"));
  CHECK(holds(over_text(), "- 513 "));
}

TEST_CASE("what the vet gave himself was given on his direction") {
  InventedDay day("Hollow Meadow");
  day.turn("513");
  ActionRow& row = day.did({ActionKind::injected, std::nullopt, Claw::none, "slowmix"});
  row.withdrawal = WithdrawalKnown::held_back;
  row.by_whom = ByWhom::vet;
  day.task("513", TaskKind::withdrawal_end, Owner::farmer, 4);
  CHECK_FALSE(holds(withdrawal_box_text(day.input()), "nobody said who ordered it"));
}

TEST_CASE("a product without withdrawal, and one whose end was told by mouth, is not asked about") {
  InventedDay day("Hollow Meadow");
  day.turn("513");
  day.did({ActionKind::spray, Foot::lh, Claw::none, "plainmix"}).withdrawal = WithdrawalKnown::none;
  day.turn("77");
  day.did({ActionKind::paste, Foot::rh, Claw::none, "tar"});
  day.did({ActionKind::no_withdrawal});
  CHECK_FALSE(holds(withdrawal_box_text(day.input()), "MILK AND MEAT"));
}

TEST_CASE("what was said of one product clears no other of that cow") {
  struct Case {
    const char* name;
    void (*call)(InventedDay&);
    std::vector<std::string> asked;
    std::vector<std::string> not_asked;
  };

  const Case rows[] = {
      {"the vet injects when it was said of a paste that there is none",
       [](InventedDay& day) {
         day.did({ActionKind::paste, Foot::lh, Claw::none, "honey"});
         day.did({ActionKind::no_withdrawal});
         day.did({ActionKind::injected, std::nullopt, Claw::none, "antibio"});
       },
       {"Injected (antibio)."},
       {"honey"}},
      {"two days of milk told of a spray",
       [](InventedDay& day) {
         day.did({ActionKind::spray, Foot::lh, Claw::none, "x"});
         day.did({ActionKind::milk_withheld, std::nullopt, Claw::none, "", 2});
         day.did({ActionKind::meat_withheld, std::nullopt, Claw::none, "", 2});
         day.did({ActionKind::injected, std::nullopt, Claw::none, "antibio"});
       },
       {"Injected (antibio)."},
       {"Spray (x)."}},
      {"pain relief after something given with its times",
       [](InventedDay& day) {
         day.did({ActionKind::given, std::nullopt, Claw::none, "painaway"});
         day.did({ActionKind::withheld, std::nullopt, Claw::none, "", 5});
         day.did({ActionKind::pain_relief_given});
       },
       {"Pain relief given."},
       {"given (painaway)."}},
      {"the order of a spray and of what was given is not known",
       [](InventedDay& day) {
         day.did({ActionKind::spray, Foot::lh, Claw::none, "x"});
         day.did({ActionKind::given, std::nullopt, Claw::none, "pen"});
         day.did({ActionKind::no_withdrawal});
       },
       {"Spray (x).", "Medicine given (pen)."},
       {}},
      {"sprays of two kinds, and none of them certain",
       [](InventedDay& day) {
         day.did({ActionKind::spray, Foot::lh, Claw::none, "x"});
         day.did({ActionKind::paste, Foot::rh, Claw::none, "y"});
         day.did({ActionKind::no_withdrawal});
       },
       {"Spray (x).", "Paste (y)."},
       {}},
      {"one spray on both hinds",
       [](InventedDay& day) {
         day.did({ActionKind::spray, Foot::lh, Claw::none, "x"});
         day.did({ActionKind::spray, Foot::rh, Claw::none, "x"});
         day.did({ActionKind::no_withdrawal});
       },
       {},
       {"Spray (x)"}},
      {"a time beside a spray whose own the list states",
       [](InventedDay& day) {
         day.did({ActionKind::spray, Foot::lh, Claw::none, "plainmix"}).withdrawal =
             WithdrawalKnown::none;
         day.did({ActionKind::given, std::nullopt, Claw::none, "pen"});
         day.did({ActionKind::withheld, std::nullopt, Claw::none, "", 5});
       },
       {},
       {"(pen)."}},
      {"told in a turn of its own",
       [](InventedDay& day) {
         day.did({ActionKind::spray, Foot::lh, Claw::none, "x"});
         day.turn("33");
         day.did({ActionKind::no_withdrawal});
       },
       {},
       {"Spray (x)"}}};
  for (const Case& row : rows) {
    InventedDay day("Hollow Meadow");
    day.turn("33");
    row.call(day);
    const std::string text = withdrawal_box_text(day.input());
    for (const std::string& asked : row.asked) {
      CHECK_MESSAGE(holds(text, asked), row.name, ": ", asked, "\n", text);
    }
    for (const std::string& told : row.not_asked) {
      CHECK_MESSAGE(!holds(text, told), row.name, ": ", told, "\n", text);
    }
  }
}

TEST_CASE("what holds nothing back is no cause that she is held back") {
  InventedDay day("Hollow Meadow");
  day.turn("513");
  day.did({ActionKind::spray, Foot::lh, Claw::none, "plainmix"}).withdrawal = WithdrawalKnown::none;
  day.did({ActionKind::given, std::nullopt, Claw::none, "pen"});
  day.did({ActionKind::withheld, std::nullopt, Claw::none, "", 4});
  day.task("513", TaskKind::withdrawal_end, Owner::farmer, 4);
  const std::string text = withdrawal_box_text(day.input());
  CHECK(holds(text, "#      Medicine given (pen), nobody said"));
  CHECK_FALSE(holds(text, "plainmix"));
}

TEST_CASE("of a cow with a doubtful number held back it is asked which, and both are held back") {
  InventedDay day = off_label_day(7, 28, 0);
  day.doubt(DoubtKind::doubtful_number, "Which is her number: 513 or 531?");
  const std::string text = withdrawal_box_text(day.input());
  CHECK_MESSAGE(holds(text, "Which is her number: 513 or 531? Until it is known"), text);
}

TEST_CASE("of a cow of whom one doubtful number was said it is asked which other she may be") {
  InventedDay day = off_label_day(7, 28, 0);
  day.doubt(DoubtKind::doubtful_number, "Which is her number: 513?");
  const std::string text = withdrawal_box_text(day.input());
  CHECK_MESSAGE(holds(text, "Which is her number: 513? It may be another cow: ask which."), text);
  CHECK_MESSAGE(!holds(text, "both cows"), text);
}

TEST_CASE("a vet who is named as directing it is not told without a name as well") {
  InventedDay day = off_label_day(7, 28, 0);
  day.rows().actions.back().directed_by = ByWhom::vet;
  const std::string text = withdrawal_box_text(day.input());
  CHECK_MESSAGE(holds(text, "ordered by Dr Lee"), text);
  CHECK_MESSAGE(!holds(text, "ordered by the vet"), text);
}

}  // namespace evenclaw
