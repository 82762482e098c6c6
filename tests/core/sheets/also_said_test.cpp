#include "core/sheets/also_said.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>

#include "core/trade/check.hpp"
#include "tests/core/sheets/invented_day.hpp"
#include "tests/core/sheets/sheet_text.hpp"

namespace evenclaw {

namespace {

std::string for_farmer(const VisitSheetInput& input) {
  return text_of(also_said_for_farmer(view_of(input, english_wording())));
}

std::string for_vet(const VisitSheetInput& input) {
  return text_of(also_said_for_vet(view_of(input, english_wording())));
}

void warned_by(InventedDay& day, const std::string& rule, Rank rank, const std::string& words,
               const std::string& decision) {
  day.warned(rank, words, decision);
  day.input().warnings.back().shown.warning.rule = rule;
}

}  // namespace

TEST_CASE("what a check said ends with a full stop before that nobody answered") {
  WarningShown shown;
  shown.warning.rank = Rank::stop;
  shown.warning.words = "bluemix off label: at least 28 days";
  CHECK(warning_words(shown, english_wording()) ==
        "Bluemix off label: at least 28 days. Not answered.");
}

TEST_CASE("every rule that is told of is one of the checks") {
  const auto rules = all_checks();
  for (const std::string_view told : rules_for_others()) {
    CHECK_MESSAGE(std::any_of(rules.begin(), rules.end(),
                              [told](const CheckRule& rule) { return rule.slug == told; }),
                  told);
  }
}

TEST_CASE("what a check says for farmer or vet stands on the page of each") {
  InventedDay day("Hollow Meadow");
  const std::string again = "Foul under a wrap (right hind): better left open to the air?";
  day.turn("201");
  warned_by(day, "foul-wrapped", Rank::note, again, "");
  day.turn("202");
  warned_by(day, "thin-sole", Rank::note, "Thin sole (left hind): soft ground, short ways.", "");
  const std::string farmer = for_farmer(day.input());
  CHECK(holds(farmer, "- 201: " + again + "\n"));
  CHECK(holds(farmer, "- 202: Thin sole (left hind): soft ground, short ways.\n"));
  CHECK(holds(for_vet(day.input()), "- 201: " + again + "\n"));
  CHECK_FALSE(holds(for_vet(day.input()), "202"));
}

TEST_CASE("cows of whom only the same was said stand together, each cow once") {
  InventedDay day("Hollow Meadow");
  for (const char* number : {"12", "33"}) {
    day.turn(number);
    warned_by(day, "no-pain-relief-said", Rank::note,
              "Left hind hurts: pain relief was not talked about; farmer or vet.", "");
  }
  day.turn("45");
  warned_by(day, "no-pain-relief-said", Rank::note, "Left hind hurts.", "");
  day.did({ActionKind::cull_advised});
  const std::string text = for_farmer(day.input());
  CHECK(holds(text, "- 12 and 33: Pain relief was not talked about; farmer or vet.\n"));
  CHECK(holds(text, "- 45: Culling advised; pain relief was not talked about; farmer or vet.\n"));
}

TEST_CASE("what nobody answered is told, and a Stop that somebody went on against") {
  struct Case {
    const char* rule;
    Rank rank;
    const char* decision;
    bool farmer;
    bool vet;
  };

  const Case rows[] = {{"worst-walk-nursing", Rank::ask, "", true, false},
                       {"worst-walk-nursing", Rank::ask, "to straw", false, false},
                       {"leaving-with-block-or-wrap", Rank::ask, "", true, true},
                       {"lame-nothing-found", Rank::stop, "go ahead", true, true},
                       {"lame-nothing-found", Rank::stop, "vet", false, false},
                       {"lame-nothing-found", Rank::stop, "", false, false},
                       {"both-claws-blocked", Rank::stop, "go ahead", true, false},
                       {"side-or-claw-swapped", Rank::ask, "", false, false}};
  for (const Case& row : rows) {
    InventedDay day("Hollow Meadow");
    day.turn("12");
    warned_by(day, row.rule, row.rank, "Something is to be known.", row.decision);
    CHECK_MESSAGE(holds(for_farmer(day.input()), "12: Something") == row.farmer, row.rule);
    CHECK_MESSAGE(holds(for_vet(day.input()), "12: Something") == row.vet, row.rule);
  }
}

TEST_CASE("what a check says of an act is not told twice") {
  InventedDay day("Hollow Meadow");
  day.turn("12");
  day.did({ActionKind::near_calving});
  day.warned(Rank::ask, "Near calving: only what cannot wait.", "");
  day.input().warnings.back().shown.warning.rule = "near-calving";
  CHECK(text_of(also_said_for_farmer(view_of(day.input(), english_wording())))
            .find("12: Near calving: only what cannot wait. Not answered.") != std::string::npos);
}

TEST_CASE("a cow that left the herd is not told of, and no list stands where nothing was said") {
  InventedDay day("Hollow Meadow");
  day.turn("12");
  CHECK(also_said_for_farmer(view_of(day.input(), english_wording())).empty());
  day.did({ActionKind::near_calving});
  CHECK(holds(for_farmer(day.input()), "- 12: Near calving.\n"));
  day.known("12").left_on = day.input().visit.day;
  CHECK(also_said_for_farmer(view_of(day.input(), english_wording())).empty());
}

TEST_CASE("of every cow with something painful treated it is said that pain relief was not told") {
  InventedDay day("Hollow Meadow");
  for (const char* number : {"412", "513", "77", "78"}) {
    day.turn(number);
    day.found({Foot::lh, Claw::outside, *number == '4' ? Lesion::su : Lesion::wla});
    if (std::string(number) != "78") day.did({ActionKind::opened, Foot::lh});
    if (std::string(number) == "77") day.did({ActionKind::pain_relief_asked});
  }
  const std::string text = text_of(also_said_for_farmer(view_of(day.input(), english_wording())));
  CHECK_MESSAGE(holds(text, "- 412 and 513: Pain relief was not talked about"), text);
}

}  // namespace evenclaw
