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

TEST_CASE("what may not be sold stands before the vet, and both before all else") {
  const auto blocks = farmers_page(view_of(three_cow_day(), english_wording()));
  REQUIRE(std::holds_alternative<BoxedNotice>(blocks.at(0)));
  REQUIRE(std::holds_alternative<BoxedNotice>(blocks.at(1)));
  CHECK(std::get<BoxedNotice>(blocks[0]).title == "MILK AND MEAT: ASK FIRST");
  CHECK(std::get<BoxedNotice>(blocks[1]).title == "VET TODAY");
}

TEST_CASE("the parts of the page stand in the order in which they are needed") {
  const std::string text = farmers_page_text(three_cow_day());
  std::size_t at = 0;
  for (const char* part :
       {"MILK AND MEAT", "VET TODAY", "To do, by date", "Stay near", "Not done, and why",
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

TEST_CASE("what was not done is told with its reason") {
  const std::string text = farmers_page_text(day_with_doubts());
  CHECK(holds(text, "- 77 not finished: went down in the crush.\n"));
  CHECK(holds(text,
              "- 513 or 531? nobody said whether lifted: right hind; her number is in "
              "doubt.\n"));
  CHECK(holds(text, "- 620 not done: not to be found in the yard.\n"));
  CHECK(holds(text,
              "- no number (brown heifer, white star) right hind not lifted; she has no "
              "number yet.\n"));
  CHECK(holds(text, "- 88 not seen: wrap off left hind is due.\n"));
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
