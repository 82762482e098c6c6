#include "core/sheets/left_for_vet.hpp"

#include <doctest/doctest.h>

#include "tests/core/sheets/invented_day.hpp"
#include "tests/core/sheets/sheet_text.hpp"

namespace evenclaw {

TEST_CASE("what to leave alone until the vet comes follows from what was called, and only that") {
  struct Case {
    const char* name;
    void (*call)(InventedDay&);
    const char* words;  // "" for nothing
  };

  const Case rows[] = {
      {"bone",
       [](InventedDay& day) {
         day.did({ActionKind::bone_showing, Foot::lh});
       },
       "leave that foot alone"},
      {"pus",
       [](InventedDay& day) {
         day.did({ActionKind::pus_above, Foot::lh});
       },
       "leave that foot alone"},
      {"toe necrosis",
       [](InventedDay& day) {
         day.found({Foot::lh, Claw::outside, Lesion::tn});
       },
       "leave that foot alone"},
      {"swollen above one claw",
       [](InventedDay& day) {
         day.found({Foot::lh, Claw::outside, Lesion::sw});
       },
       "leave that foot alone"},
      {"swollen, nobody said above which claw",
       [](InventedDay& day) {
         day.found({Foot::lh, Claw::not_called, Lesion::sw});
       },
       "leave that foot alone"},
      {"fall in the words why she was let out",
       [](InventedDay& day) {
         day.last_turn().end = TurnEnd::unfinished;
         day.last_turn().end_reason = "she went down";
       },
       "no more work on her feet today"},
      {"swollen above both",
       [](InventedDay& day) {
         day.found({Foot::lh, Claw::both, Lesion::sw});
       },
       "no wrap"},
      {"foul",
       [](InventedDay& day) {
         day.found({Foot::lh, Claw::none, Lesion::ip});
       },
       "no wrap"},
      {"blood",
       [](InventedDay& day) {
         day.did({ActionKind::bleeding, Foot::lh});
       },
       "press on it"},
      {"fall", [](InventedDay& day) { day.did({ActionKind::went_down}); },
       "no more work on her feet today"},
      {"both hurt",
       [](InventedDay& day) {
         day.found({Foot::lh, Claw::outside, Lesion::su});
         day.found({Foot::lh, Claw::inside, Lesion::wla});
       },
       "no good one for a block"},
      {"one hurts, the other is bruised",
       [](InventedDay& day) {
         day.found({Foot::lh, Claw::outside, Lesion::su});
         day.found({Foot::lh, Claw::inside, Lesion::sh, Place::not_called, Degree::slight});
       },
       ""},
      {"fever alone", [](InventedDay& day) { day.did({ActionKind::fever}); }, ""},
      {"another foot",
       [](InventedDay& day) {
         day.did({ActionKind::bone_showing, Foot::rh});
       },
       ""}};

  for (const Case& row : rows) {
    InventedDay day("Hollow Meadow");
    day.turn("412");
    row.call(day);
    const VisitView view = view_of(day.input(), english_wording());
    const auto words = left_for_vet(view, view.cows.at(0), Foot::lh);
    const std::string expected = row.words;
    CHECK_MESSAGE(words.size() == (expected.empty() ? 0U : 1U), row.name);
    if (!words.empty()) CHECK_MESSAGE(holds(words[0], expected), row.name);
  }
}

TEST_CASE("what was seen at an earlier visit is left alone until the vet came, but blood is over") {
  const std::pair<const char*, const char*> rows[] = {
      {"pus-above-the-horn", "leave that foot alone until the vet has seen it"},
      {"foul-without-the-vet", "no wrap: foul lives without air"},
      {"bleeding-goes-on", ""},
      {"lame-on-two-legs", ""}};
  for (const auto& [slug, words] : rows) {
    const std::string rule(slug);
    InventedDay day("Hollow Meadow");
    day.known("412");
    Warning warning;
    warning.rank = Rank::stop;
    warning.rule = rule;
    warning.foot = Foot::lh;
    day.input().earlier_stops.push_back(
        {day.id_of("412"), EntryId{}, day.input().visit.day - 7, warning});
    const VisitView view = view_of(day.input(), english_wording());
    const auto left = left_from_before(view, day.id_of("412"), Foot::lh);
    const std::vector<std::string> expected =
        *words == 0 ? std::vector<std::string>() : std::vector<std::string>{words};
    CHECK_MESSAGE(left == expected, rule);
    CHECK(left_from_before(view, day.id_of("412"), Foot::rh).empty());
  }
}

}  // namespace evenclaw
