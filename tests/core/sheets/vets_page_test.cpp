#include "core/sheets/vets_page.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <variant>

#include "tests/core/sheets/invented_day.hpp"
#include "tests/core/sheets/sheet_text.hpp"

namespace evenclaw {

namespace {

std::string vets_page_text(const VisitSheetInput& input) {
  return text_of(vets_page(view_of(input, english_wording())));
}

bool has_no_vets_page(const VisitSheetInput& input) {
  return vets_page(view_of(input, english_wording())).empty();
}

/// Rows of a table whatever the width of its columns.
std::string single_spaced(std::string text) {
  const auto end =
      std::unique(text.begin(), text.end(), [](char a, char b) { return a == ' ' && b == ' '; });
  text.erase(end, text.end());
  return text;
}

}  // namespace

TEST_CASE("the vet's page starts on a sheet of its own") {
  const auto blocks = vets_page(view_of(three_cow_day(), english_wording()));
  REQUIRE_FALSE(blocks.empty());
  CHECK(std::holds_alternative<PageBreak>(blocks[0]));
}

TEST_CASE("of a few cows the vet is told what his box and the list cow by cow do not tell") {
  const VisitSheetInput three = three_cow_day();
  const VisitView few = view_of(three, english_wording());
  CHECK(has_few_cows(few));
  const auto blocks = vets_part_of_few(few);
  REQUIRE_FALSE(blocks.empty());
  CHECK(std::holds_alternative<Heading>(blocks[0]));
  const std::string text = text_of(blocks);
  CHECK(holds(text, "Put on or given"));
  CHECK_FALSE(holds(text, "VET TODAY"));
  CHECK_FALSE(holds(text, "lesion by lesion"));
  const VisitSheetInput forty = day_with_forty_tasks();
  CHECK_FALSE(has_few_cows(view_of(forty, english_wording())));
}

TEST_CASE("a day with nothing for the vet has no such page") {
  CHECK(has_no_vets_page(day_with_nothing_found()));
}

TEST_CASE("what does not heal stands first, with since when and how often") {
  InventedDay day("Hollow Meadow");
  day.turn("9");
  day.found({Foot::lh, Claw::outside, Lesion::sh});
  day.turn("412");
  day.found({Foot::lh, Claw::outside, Lesion::su}).step = CaseStep::goes_on;
  CaseRow& of_it = day.rows().cases.back();
  of_it.first_day = day.input().visit.day - 56;
  of_it.times_found = 3;
  day.did({ActionKind::block_again, Foot::lh, Claw::inside});
  day.turn("513");
  day.found({Foot::rh, Claw::none, Lesion::dd}).step = CaseStep::relapse;
  const std::string text = vets_page_text(day.input());
  const std::size_t first = text.find("Still there, or came back (2 of 3 findings)");
  REQUIRE(first != std::string::npos);
  CHECK(text.find("Found today, lesion by lesion (any of these on 3 of 3 feet lifted)") > first);
  CHECK(holds(text, "since Tue 29 Sep; at 3 visits; blocked again, not healed\n"));
  CHECK(holds(text, "had been gone and came back\n"));
}

TEST_CASE("a lame cow of whom nothing tells why is named with her leg and score") {
  InventedDay day("Hollow Meadow");
  day.turn("9", Reason::lame, {Foot::lh});
  day.found({Foot::lh, Claw::outside, Lesion::su});
  TurnRow& turn = day.turn("412", Reason::lame, {Foot::rh});
  turn.mobility_scale = MobilityScale::zero_to_three;
  turn.mobility_score = 2;
  day.foot(Foot::rh, FootState::nothing_found);
  day.found({Foot::lh, Claw::outside, Lesion::sh});
  day.turn("513", Reason::lame, {Foot::lf});
  day.rest_fine();
  const std::string text = vets_page_text(day.input());
  CHECK(holds(text, "that tells why (2 of 3 cows that came lame)"));
  CHECK(holds(text, "- 412 lame on right hind, right hind nothing found, mobility 2 of 3.\n"));
  CHECK(holds(text, "- 513 lame on left front, left front not lifted.\n"));
  CHECK_FALSE(holds(text, "- 9 lame"));
}

TEST_CASE("blood drawn and thin soles are counted by foot, out of the feet lifted") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.rest_fine();
  day.found({Foot::lh, Claw::outside, Lesion::blood_drawn});
  day.found({Foot::lh, Claw::inside, Lesion::blood_drawn});
  day.turn("513");
  day.rest_fine();
  day.found({Foot::rh, Claw::outside, Lesion::ts});
  const std::string text = vets_page_text(day.input());
  CHECK(holds(text, "- Blood drawn on 1 of 4 feet lifted: 412 left hind.\n"));
  CHECK(holds(text, "- Thin sole on 1 of 4 feet lifted: 513 right hind.\n"));
}

TEST_CASE("medicines stand with who directed them and what is known of withdrawal") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  ActionRow& spray = day.did({ActionKind::spray, Foot::lh, Claw::none, "slowmix"});
  spray.directed_by = ByWhom::vet;
  spray.withdrawal = WithdrawalKnown::held_back;
  spray.milk_till = day.input().visit.day + 2;
  spray.meat_till = day.input().visit.day + 28;
  day.did({ActionKind::paste, Foot::lh, Claw::none, "tar"});
  day.did({ActionKind::powder, Foot::lh}).withdrawal = WithdrawalKnown::none;
  day.did({ActionKind::pain_relief_given});
  day.did({ActionKind::told_farmer});
  const std::string text = vets_page_text(day.input());
  const std::string rows = single_spaced(text);
  CHECK(holds(rows,
              "Spray (slowmix), ordered by the vet milk to Thu 26 Nov and meat to Tue 22 Dec "
              "412 left hind\n"));
  CHECK(holds(rows, "Paste (tar) not recorded 412 left hind\n"));
  CHECK(holds(rows, "Powder none, as stated 412 left hind\n"));
  CHECK(holds(rows, "Pain relief given not recorded 412\n"));
  CHECK_FALSE(holds(text, "farmer told"));
}

TEST_CASE("an end told by mouth is the withdrawal of what no list knows, of that cow alone") {
  InventedDay day("Hollow Meadow");
  for (const char* number : {"412", "513"}) {
    day.turn(number);
    day.did({ActionKind::pain_relief_given});
    if (std::string(number) == "513") continue;
    day.did({ActionKind::meat_withheld}).meat_till = day.input().visit.day + 2;
  }
  const std::string text = vets_page_text(day.input());
  const std::string rows = single_spaced(text);
  const std::string end =
      " told by mouth: meat held back up to and with Thu 26 Nov; milk withdrawal not known 412";
  CHECK(holds(rows, "Pain relief given" + end + "\n"));
  CHECK(holds(rows, "Pain relief given not recorded 513\n"));
}

TEST_CASE("an end told of one product is not told of another, and as it was told") {
  InventedDay day("Hollow Meadow");
  day.turn("43");
  day.did({ActionKind::spray, Foot::lh, Claw::none, "x"});
  ActionRow& told = day.did({ActionKind::milk_withheld, std::nullopt, Claw::none, "", 2});
  told.milk_till = day.input().visit.day + 7;  // the list holds back something else so long
  day.did({ActionKind::injected, std::nullopt, Claw::none, "antibio"});
  day.turn("44");
  day.did({ActionKind::paste, Foot::rh, Claw::none, "tar"});
  day.did({ActionKind::pain_relief_given});
  day.did({ActionKind::no_withdrawal});
  const std::string rows = single_spaced(vets_page_text(day.input()));
  CHECK(holds(rows,
              "Spray (x) told by mouth: milk held back up to and with Thu 26 Nov; meat withdrawal "
              "not known 43"));
  CHECK(holds(rows, "Injected (antibio) not recorded 43\n"));
  CHECK(holds(rows, "Paste (tar) told by mouth, not known of which: no withdrawal 44"));
}

TEST_CASE("stages of digital dermatitis are counted by foot, those not called beside them") {
  InventedDay day("Hollow Meadow");
  for (const DdStage stage : {DdStage::raw, DdStage::raw, DdStage::m2, DdStage::not_called}) {
    day.turn(std::to_string(day.rows().turns.size() + 1));
    day.rest_fine();
    day.found({Foot::rh, Claw::none, Lesion::dd, Place::behind, Degree::not_called, stage});
  }
  CHECK(holds(
      vets_page_text(day.input()),
      "Digital dermatitis on 4 of 8 feet lifted: stage not called on 1, M2 on 1 and raw on 2.\n"));
}

TEST_CASE("mobility is told by its scale, one never turned into the other") {
  InventedDay day("Hollow Meadow");

  const struct {
    MobilityScale scale;
    int score;
  } rows[] = {{MobilityScale::zero_to_three, 2},
              {MobilityScale::zero_to_three, 0},
              {MobilityScale::zero_to_three, 2},
              {MobilityScale::one_to_five, 2}};

  for (const auto& row : rows) {
    TurnRow& turn = day.turn(std::to_string(day.rows().turns.size() + 1));
    turn.mobility_scale = row.scale;
    turn.mobility_score = row.score;
  }
  day.turn("99");
  const std::string text = vets_page_text(day.input());
  CHECK(holds(text,
              "- Scale 0-3, 3 of 5 cows in the crush scored: score 0 on 1 cow and score 2 on 2 "
              "cows (1 and 3).\n"));
  CHECK(holds(text, "- Scale 1-5, 1 of 5 cows in the crush scored: score 2 on 1 cow.\n"));
}

TEST_CASE("the cows the vet is called to are the first lines of his page") {
  const std::string text = vets_page_text(three_cow_day());
  const std::string line = "- 412: Left hind, outside claw: white line abscess, heel, bad (WLA).\n";
  CHECK(holds(text, "VET TODAY\n"));
  CHECK(holds(text, line));
  CHECK(text.find(line) < text.find("Found today"));
}

TEST_CASE("cows that walk badly are named beside their score, others counted") {
  InventedDay day("Hollow Meadow");
  int score = 0;
  for (const char* number : {"12", "15"}) {
    TurnRow& turn = day.turn(number);
    turn.mobility_scale = MobilityScale::zero_to_three;
    turn.mobility_score = score;
    score += 3;
  }
  CHECK(holds(vets_page_text(day.input()), "score 0 on 1 cow and score 3 on 1 cow (15)."));
}

TEST_CASE("the vet of the list is named as who directs, and the milking of an end is told") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  ActionRow& spray = day.did({ActionKind::spray, Foot::lh, Claw::none, "slowmix"});
  spray.withdrawal = WithdrawalKnown::held_back;
  spray.milk_till = day.input().visit.day + 3;
  spray.milk_milking = Milking::morning;
  spray.listed = ProductId{uuid_derived("slowmix")};
  day.input().stated.push_back({spray.turn, *spray.listed, StatedBy::vet, "Dr Moor"});
  CHECK(holds(single_spaced(vets_page_text(day.input())),
              "Spray (slowmix), ordered by Dr Moor milk held back up to and with the morning "
              "milking of Fri 27 Nov 412"));
}

TEST_CASE("of a medicine on the list and a time told of it the later end is told") {
  InventedDay day("Hollow Meadow");
  day.turn("525");
  ActionRow& spray = day.did({ActionKind::spray, Foot::lh, Claw::none, "whitemix"});
  spray.withdrawal = WithdrawalKnown::held_back;
  spray.milk_till = spray.day + 2;
  spray.meat_till = spray.day + 5;
  day.did({ActionKind::milk_withheld}).milk_till = day.input().visit.day + 4;
  day.did({ActionKind::meat_withheld}).meat_till = day.input().visit.day + 3;
  const std::string page = text_of(vets_page(view_of(day.input(), english_wording())));
  CHECK_MESSAGE(holds(page, "milk to Sat 28 Nov and meat to Sun 29 Nov"), page);
}

}  // namespace evenclaw
