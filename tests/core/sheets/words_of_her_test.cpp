#include "core/sheets/words_of_her.hpp"

#include <doctest/doctest.h>

#include "core/sheets/vet_box.hpp"
#include "tests/core/sheets/invented_day.hpp"
#include "tests/core/sheets/sheet_text.hpp"

namespace evenclaw {

namespace {

std::string box_of(InventedDay& day) {
  return text_of(vet_box(view_of(day.input(), english_wording())));
}

}  // namespace

TEST_CASE("why she was not done, why she came and notes are her words, in that order") {
  InventedDay day("Hollow Meadow");
  TurnRow& turn = day.turn("412");
  turn.end = TurnEnd::not_done;
  turn.end_reason = "went down";
  turn.reason_words = "pus";
  turn.note = "runs with the dry cows";
  day.foot(Foot::lh, FootState::unsaid).note = "swollen";
  const VisitView view = view_of(day.input(), english_wording());
  std::string told;
  for (const WordsOfHer& said : words_of_her(view.cows.front())) {
    told += words_as_told(said, english_wording()) + (is_only_asked(said) ? "? " : ". ");
  }
  CHECK(told ==
        "not done: went down. came for: pus? said in a note: runs with the dry cows? said in a "
        "note: swollen? ");
}

TEST_CASE(
    "a note of a foot and what she came for put her into the vet's box, and are asked about") {
  const struct {
    const char* name;
    void (*say)(InventedDay&);
    std::string line;
  } rows[] = {{"a note of a foot",
               [](InventedDay& day) {
                 day.foot(Foot::lh, FootState::unsaid).note = "swollen above the horn";
               },
               "Left hind, said in a note: swollen above the horn.\n"},
              {"a note of her", [](InventedDay& day) { day.last_turn().note = "fever"; },
               "The cow, said in a note: fever.\n"},
              {"came for", [](InventedDay& day) { day.last_turn().reason_words = "pus"; },
               "The cow, came for: pus.\n"}};

  for (const auto& row : rows) {
    InventedDay day("Hollow Meadow");
    day.turn("412");
    row.say(day);
    const std::string text = box_of(day);
    CHECK_MESSAGE(holds(text, row.line), text);
    CHECK_MESSAGE(holds(text, "Ask the trimmer today what was meant"), text);
  }
}

TEST_CASE("pus in a note is of the white line abscess that was found there") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.found({Foot::lh, Claw::outside, Lesion::wla});
  day.foot(Foot::lh, FootState::finding).note = "lots of pus";
  CHECK(holds(box_of(day), "No vet was asked for"));
}

TEST_CASE("the vet named in words is asked about: what he is to see, and when") {
  InventedDay day("Hollow Meadow");
  TurnRow& turn = day.turn("504");
  turn.end = TurnEnd::unfinished;
  turn.end_reason = "\"504 the vet should see it\" was not understood";
  const std::string text = box_of(day);
  CHECK(holds(text,
              "# 504  The cow, not finished: \"504 the vet should see it\" was not understood"));
  CHECK(
      holds(text, "Ask the trimmer today what the vet is to see, and when: that was not called."));
  day.task("504", TaskKind::vet, Owner::vet, 0);
  CHECK(!holds(box_of(day), "and when"));
}

}  // namespace evenclaw
