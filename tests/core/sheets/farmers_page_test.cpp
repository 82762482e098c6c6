#include "core/sheets/farmers_page.hpp"

#include <doctest/doctest.h>

#include <variant>

#include "tests/core/sheets/invented_day.hpp"
#include "tests/core/sheets/sheet_text.hpp"

namespace evenclaw {

namespace {

std::string farmers_page_text(const VisitSheetInput& input) {
  return text_of(farmers_page(view_of(input, english_wording())));
}

}  // namespace

TEST_CASE("what was told or asked twice stands once") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.input().told = {"513 wrap off", "513 wrap off", "77 sold"};
  day.input().asked = {{"66", "Which cow was it?"}, {"66", "Which cow was it?"}};
  const std::string text = farmers_page_text(day.input());
  CHECK(text.find("513 wrap off") == text.rfind("513 wrap off"));
  CHECK(holds(text, "- 77 sold\n"));
  CHECK(text.find("Which cow was it?") == text.rfind("Which cow was it?"));
}

TEST_CASE("the vet of today stands before what may not be sold, and both before all else") {
  const auto blocks = farmers_page(view_of(three_cow_day(), english_wording()));
  REQUIRE(std::holds_alternative<BoxedNotice>(blocks.at(0)));
  REQUIRE(std::holds_alternative<BoxedNotice>(blocks.at(1)));
  CHECK(std::get<BoxedNotice>(blocks[0]).title == "VET TODAY");
  CHECK(std::get<BoxedNotice>(blocks[1]).title == "MILK AND MEAT: ASK FIRST");
}

TEST_CASE("the vet of a later day stands behind what may not be sold") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.did({ActionKind::spray, Foot::lh, Claw::none, "blue"});
  day.task("412", TaskKind::vet, Owner::vet, 3);
  const std::string text = farmers_page_text(day.input());
  CHECK_MESSAGE(text.find("MILK AND MEAT") < text.find("# VET"), text);
}

TEST_CASE("the parts of the page stand in the order in which they are needed") {
  VisitSheetInput input = three_cow_day();
  input.not_seen = {{CowId{}, "88", "wrap off left hind is due"}};
  const std::string text = farmers_page_text(input);
  std::size_t at = 0;
  for (const char* part :
       {"VET TODAY", "MILK AND MEAT", "To do, by date", "Stay near", "Not done, and why",
        "The day in short", "The work, to be agreed", "Ring the trimmer when", "Take care"}) {
    const std::size_t found = text.find(part, at);
    CHECK_MESSAGE(found != std::string::npos, part);
    if (found != std::string::npos) at = found;
  }
}

TEST_CASE("nothing else is left to do when all there is stands in a box") {
  InventedDay day("Hollow Meadow");
  day.turn("513");
  day.task("513", TaskKind::withdrawal_end, Owner::farmer, 2);
  CHECK(holds(farmers_page_text(day.input()), "Nothing else is left to do"));
  CHECK(holds(farmers_page_text(day_with_nothing_found()), "Nothing is left to do."));
}

TEST_CASE("something is left to do where a refused line may tell of a sign") {
  InventedDay day("Hollow Meadow");
  day.turn("803");
  day.last_turn().end = TurnEnd::unfinished;
  day.last_turn().end_reason = "\"803 fevr\" was not understood";
  const std::string text = text_of(farmers_page(view_of(day.input(), english_wording())));
  CHECK_MESSAGE(holds(text, "Ask the trimmer today what was meant"), text);
  CHECK_MESSAGE(!holds(text, "Nothing is left to do."), text);
}

TEST_CASE("that nothing was left undone is a sentence of the day and has no heading") {
  const std::string text = farmers_page_text(day_with_nothing_found());
  CHECK_FALSE(holds(text, "Not done, and why"));
  CHECK(
      holds(text, "- Every cow that came was done, and every foot meant for today was lifted.\n"));
  CHECK_FALSE(holds(farmers_page_text(day_with_doubts()), "Every cow that came was done"));
}

TEST_CASE("what was not done is told with its reason") {
  const std::string text = farmers_page_text(day_with_doubts());
  CHECK(holds(text, "- 77 not finished: went down in the crush.\n"));
  CHECK(holds(text, "- 513 or 531? nobody said whether lifted: right hind.\n"));
  CHECK(holds(text, "- 620 not done: not to be found in the yard.\n"));
  CHECK(holds(text, "- no number (brown heifer, white star) right hind not lifted.\n"));
  CHECK(holds(text, "- 88 not seen: wrap off left hind is due.\n"));
}

TEST_CASE("cows to be identified stand under a heading of their own") {
  const std::string text = farmers_page_text(day_with_doubts());
  const std::size_t at = text.find("Which number?\n");
  REQUIRE(at != std::string::npos);
  const std::string part = text.substr(at);
  CHECK(holds(part, "- no number (brown heifer, white star)\n"));
  CHECK(holds(part, "- 513 or 531?\n"));
  CHECK(holds(part, "Look at her ear tag"));
  CHECK_FALSE(holds(farmers_page_text(day_with_nothing_found()), "Which number?"));
}

TEST_CASE("a cow of an earlier visit stands there as long as something of hers is open") {
  const struct {
    const char* name;
    void (*say)(InventedDay&);
    bool is_told;
  } rows[] = {
      {"a task is open",
       [](InventedDay& day) { day.task("brown", TaskKind::wrap_off, Owner::farmer, 2); }, true},
      {"nothing is", [](InventedDay&) {}, false},
      {"her number is known now",
       [](InventedDay& day) {
         day.task("brown", TaskKind::wrap_off, Owner::farmer, 2);
         day.known("brown").known = CowKnown::numbered;
       },
       false},
      {"she left",
       [](InventedDay& day) {
         day.task("brown", TaskKind::wrap_off, Owner::farmer, 2);
         day.known("brown").left_on = day.input().visit.day;
       },
       false}};

  for (const auto& row : rows) {
    InventedDay day("Hollow Meadow");
    CowRow& cow = day.known("brown");
    cow.known = CowKnown::unnumbered;
    cow.number = cow.number_said = "";
    cow.looks = "brown heifer";
    cow.last_seen = day.input().visit.day - 7;
    row.say(day);
    const std::string text = farmers_page_text(day.input());
    CHECK_MESSAGE(holds(text, "- no number (brown heifer), of Tue 17 Nov\n") == row.is_told,
                  row.name);
  }
}

TEST_CASE("cows said to be gone who were in the crush are asked about in one line") {
  InventedDay day("Hollow Meadow");
  for (const char* number : {"78", "77"}) {
    day.turn(number);
    day.doubt(DoubtKind::told_gone, "Said to be gone today, and in the crush: is she still here?");
  }
  const std::string text = farmers_page_text(day.input());
  CHECK_MESSAGE(holds(text, "- 77 and 78 Said to be gone today, and in the crush: is she still"),
                text);
}

TEST_CASE("that something could be notifiable leads the page, with the cows it is seen on") {
  InventedDay day("Hollow Meadow");
  for (const char* number : {"412", "413"}) {
    day.turn(number);
    day.did({ActionKind::sore_mouth});
    day.did({ActionKind::withheld, {}, Claw::none, "", 3});
  }
  const auto blocks = farmers_page(view_of(day.input(), english_wording()));
  REQUIRE(std::holds_alternative<BoxedNotice>(blocks.at(0)));
  const auto& box = std::get<BoxedNotice>(blocks[0]);
  CHECK(box.title == "COULD BE NOTIFIABLE");
  CHECK(box.items.at(0).lines.at(0).at(0).text.rfind("412 (sore mouth) and 413 (sore mouth): ring",
                                                     0) == 0);
}

TEST_CASE("a cow without a number that was not seen is called as everywhere else") {
  InventedDay day("Hollow Meadow");
  CowRow& cow = day.known("white face");
  cow.number = cow.number_said = "";
  cow.looks = "white face";
  day.input().not_seen.push_back({cow.cow, "white face", "block check left hind is due"});
  CHECK(holds(farmers_page_text(day.input()),
              "- no number (white face) not seen: block check left hind is due.\n"));
}

TEST_CASE("fronts that were not lifted on a day of hinds are not told as not done") {
  for (const bool is_lame_there : {false, true}) {
    InventedDay day("Hollow Meadow");
    day.turn("709", Reason::routine, is_lame_there ? FootSet{Foot::lf} : FootSet{});
    day.rest_fine();
    day.foot(Foot::lf, FootState::not_lifted);
    CHECK(holds(farmers_page_text(day.input()), "709 left front not lifted") == is_lame_there);
  }
}

TEST_CASE("that nothing holds milk or meat back is said only where that is known") {
  struct Case {
    const char* name;
    void (*call)(InventedDay&);
    bool told;
  };

  const Case rows[] = {
      {"nothing given", [](InventedDay&) {}, true},
      {"a spray without withdrawal",
       [](InventedDay& day) {
         day.did({ActionKind::spray, Foot::lh}).withdrawal = WithdrawalKnown::none;
       },
       true},
      {"a spray of which nobody knows",
       [](InventedDay& day) {
         day.did({ActionKind::spray, Foot::lh});
       },
       false},
      {"an end of an earlier visit",
       [](InventedDay& day) { day.task("88", TaskKind::withdrawal_end, Owner::farmer, 3); }, false},
      {"not finished", [](InventedDay& day) { day.last_turn().end = TurnEnd::unfinished; }, false},
      {"a record removed",
       [](InventedDay& day) {
         day.input().removed.push_back({"9", {}});
       },
       false},
      {"the visit is open", [](InventedDay& day) { day.input().visit.closed = false; }, false}};
  for (const Case& row : rows) {
    InventedDay day("Hollow Meadow");
    day.turn("412");
    day.rest_fine();
    row.call(day);
    CHECK_MESSAGE(holds(farmers_page_text(day.input()), "Nothing was given or put on") == row.told,
                  row.name);
  }
}

TEST_CASE("a cow that was done in the end is not told of as not done") {
  InventedDay day("Hollow Meadow");
  day.turn("412").end = TurnEnd::not_done;
  CHECK(holds(farmers_page_text(day.input()), "412 not done"));
  day.turn("412");
  day.rest_fine();
  CHECK_FALSE(holds(farmers_page_text(day.input()), "412 not done"));
}

TEST_CASE("when everything was done that is said") {
  CHECK(holds(farmers_page_text(day_with_nothing_found()), "Every cow that came was done"));
}

TEST_CASE("raw digital dermatitis is not in hand by what does not look at it") {
  for (const TaskKind kind :
       {TaskKind::block_check, TaskKind::block_off, TaskKind::watch_her_walk}) {
    InventedDay day("Hollow Meadow");
    day.turn("506");
    day.rest_fine();
    day.found({Foot::lh, Claw::none, Lesion::dd}).stage = DdStage::raw;
    day.task_on(Foot::lh, Claw::inside, kind, Owner::trimmer, 28);
    day.task("506", kind, Owner::farmer, 14);
    day.task("506", TaskKind::vet, Owner::vet, 0).rule = "pain-relief";
    CHECK(holds(farmers_page_text(day.input()), "506 raw on left hind"));
  }
}

TEST_CASE("raw digital dermatitis on which nothing was put is told of, unless it is in hand") {
  using Change = void (*)(InventedDay&);
  const Change in_hand[] = {
      [](InventedDay& day) {
        day.did({ActionKind::spray, Foot::lh});
      },
      [](InventedDay& day) {
        day.did({ActionKind::wrap_on, Foot::lh});
      },
      [](InventedDay& day) {
        day.task_on(Foot::lh, Claw::none, TaskKind::look_at_foot, Owner::trimmer, 10);
      },
      [](InventedDay& day) { day.rows().findings.back().stage = DdStage::chronic; }};
  for (const Change change : in_hand) {
    InventedDay day("Hollow Meadow");
    day.turn("506");
    day.rest_fine();
    day.found({Foot::lh, Claw::none, Lesion::dd}).stage = DdStage::raw;
    day.did({ActionKind::injected});
    CHECK(holds(farmers_page_text(day.input()),
                "506 raw on left hind, and nothing was put on it: plan another look (common "
                "practice, no source)."));
    change(day);
    CHECK_FALSE(holds(farmers_page_text(day.input()), "506 raw"));
  }
}

}  // namespace evenclaw
