#include "core/sheets/cow_cards.hpp"

#include <doctest/doctest.h>

#include "tests/core/sheets/invented_day.hpp"
#include "tests/core/sheets/sheet_text.hpp"

namespace evenclaw {

namespace {

std::string cards_text(const VisitSheetInput& input) {
  return text_of(cow_by_cow(view_of(input, english_wording())));
}

}  // namespace

TEST_CASE("a cow with nothing found on today's feet stands in a table by her number") {
  InventedDay day("Hollow Meadow");
  day.turn("77", Reason::dry_off);
  day.foot(Foot::lh, FootState::nothing_found).trimmed = Trimmed::yes;
  day.foot(Foot::rh, FootState::nothing_found).trimmed = Trimmed::yes;
  const std::string text = cards_text(day.input());
  CHECK(holds(text, "Nothing found (1 of 1 cows that were called)"));
  CHECK(holds(text, "Dry-off   both hind feet, trimmed         1  77\n"));
}

TEST_CASE("cows of whom the same is told share a row, and the row of most cows stands first") {
  InventedDay day("Hollow Meadow");
  day.turn("513", Reason::heifer);
  day.rest_fine();
  for (const char* number : {"77", "9", "412"}) {
    day.turn(number);
    day.rest_fine();
  }
  const std::string text = cards_text(day.input());
  CHECK(holds(text, "Nothing found (4 of 4 cows that were called)"));
  CHECK(holds(text,
              "Routine   both hind feet         3  9, 77 and 412\n"
              "Heifer    both hind feet         1  513\n"));
}

TEST_CASE("whatever else there is to say of a cow gives her a card") {
  using Change = void (*)(InventedDay&);
  const Change changes[] = {
      [](InventedDay& day) { day.last_turn().note = "kicks"; },
      [](InventedDay& day) { day.measured(Foot::lh, 785); },
      [](InventedDay& day) { day.last_turn().end = TurnEnd::unfinished; },
      [](InventedDay& day) { day.last_turn().came_lame = true; },
      [](InventedDay& day) { day.did({ActionKind::told_farmer}); },
      [](InventedDay& day) { day.put_on(Fixture::wrap, Foot::lh, Claw::none, 9); },
      [](InventedDay& day) { day.warned(Rank::ask, "Still on?", ""); },
      [](InventedDay& day) { day.foot(Foot::lh, FootState::nothing_found).note = "long toe"; },
      [](InventedDay& day) { day.doubt(DoubtKind::doubtful_number, "513 or 531?"); },
      [](InventedDay& day) {
        day.rows().feet.pop_back();
        day.last_turn().lifted = {Foot::lh};
      },
      [](InventedDay& day) { day.input().visit.todays_feet = four_feet; }};
  for (const Change change : changes) {
    InventedDay day("Hollow Meadow");
    day.turn("77");
    day.rest_fine();
    CHECK(holds(cards_text(day.input()), "Nothing found (1 of 1 cows that were called)"));
    change(day);
    CHECK(
        holds(cards_text(day.input()), "Found, done or still open (1 of 1 cows that were called)"));
  }
}

TEST_CASE("warnings are shown with what was decided, also when nobody decided") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.warned(Rank::stop, "Left hind: a block on both claws.", "go ahead");
  day.warned(Rank::ask, "Wrap on left hind: still on?", "");
  day.warned(Rank::ask, "Inside meant?", "no, outside");
  const std::string text = cards_text(day.input());
  CHECK(holds(text, "Stop: Left hind: a block on both claws. Decided: go ahead anyway."));
  CHECK(holds(text, "Asked: Wrap on left hind: still on? Not answered."));
  CHECK(holds(text, "Asked: Inside meant? Decided: no, outside."));
}

TEST_CASE("a note stands on the card, and not when something said later settled it") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.warned(Rank::note, "Left hind hurts: pain relief was not talked about.", "");
  day.warned(Rank::note, "A scab, but no treatment is known here.", "no, chronic");
  const std::string text = cards_text(day.input());
  CHECK(holds(text, "Left hind hurts: pain relief was not talked about."));
  CHECK_FALSE(holds(text, "A scab"));
}

TEST_CASE("a cow that was not done has a card without feet") {
  const std::string text = cards_text(day_with_doubts());
  CHECK(holds(text, "620\n    Not done: Not to be found in the yard.\n\n"));
}

TEST_CASE("acts that concern the whole cow stand under the cow") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.did({ActionKind::vet});
  day.did({ActionKind::told_farmer});
  CHECK(holds(cards_text(day.input()), "The cow: Vet asked for and farmer told."));
}

TEST_CASE("feet are drawn of a cow on whose feet something was found or is") {
  const struct {
    const char* name;
    void (*say)(InventedDay&);
    bool is_drawn;
  } rows[] = {{"a lesion",
               [](InventedDay& day) {
                 day.found({Foot::lh, Claw::outside, Lesion::su});
               },
               true},
              {"a wrap of before",
               [](InventedDay& day) { day.put_on(Fixture::wrap, Foot::lh, Claw::none, 7); }, true},
              {"a lesion of before",
               [](InventedDay& day) {
                 day.earlier({Foot::lh, Claw::outside, Lesion::su}, 7);
               },
               true},
              {"nothing", [](InventedDay&) {}, false}};

  for (const auto& row : rows) {
    InventedDay day("Hollow Meadow");
    day.turn("412").note = "runs with the dry cows";
    day.rest_fine();
    row.say(day);
    for (const Block& block : cow_by_cow(view_of(day.input(), english_wording()))) {
      const Card* card = std::get_if<Card>(&block);
      if (card != nullptr) CHECK_MESSAGE(card->figure.has_value() == row.is_drawn, row.name);
    }
  }
}

TEST_CASE("that no reason was called is said once above the cards, with how many of how many") {
  InventedDay day("Hollow Meadow");
  for (const char* number : {"29", "54", "87"}) {
    day.turn(number, Reason::not_called);
    day.found({Foot::lh, Claw::outside, Lesion::su});
  }
  day.turn("112", Reason::fresh);
  day.found({Foot::lh, Claw::outside, Lesion::su});
  const std::string text = cards_text(day.input());
  CHECK(holds(text, "Reason not called: 3 of 4 cows that were called."));
  CHECK(text.find("eason not called") == text.rfind("eason not called"));
  CHECK(holds(text, "112  Fresh."));
}

TEST_CASE("lines nobody understood stand on the card in its whole width, not beside her number") {
  InventedDay day("Hollow Meadow");
  TurnRow& turn = day.turn("87", Reason::recheck);
  turn.end = TurnEnd::unfinished;
  turn.end_reason = "\"87 recheck, block still on\" was not understood";
  day.found({Foot::rh, Claw::outside, Lesion::su});
  for (const Block& block : cow_by_cow(view_of(day.input(), english_wording()))) {
    const Card* card = std::get_if<Card>(&block);
    if (card == nullptr) continue;
    REQUIRE(card->head.size() == 1);
    CHECK(card->head[0].text == "Recheck.");
    REQUIRE(!card->lines.empty());
    CHECK(card->lines[0].term == "Not finished");
    CHECK(card->lines[0].runs[0].text == turn.end_reason + ".");
  }
}

}  // namespace evenclaw
