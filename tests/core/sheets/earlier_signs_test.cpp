#include "core/sheets/earlier_signs.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "core/sheets/farmers_page.hpp"
#include "core/sheets/vet_box.hpp"
#include "tests/core/sheets/invented_day.hpp"
#include "tests/core/sheets/sheet_text.hpp"

namespace evenclaw {

namespace {

std::vector<EarlierStop> left_of(InventedDay& day, const std::vector<EarlierStop>& stops = {}) {
  return signs_not_settled(day.input(), signs_seen(day.rows(), english_wording()), stops);
}

}  // namespace

TEST_CASE("a sign that raised no Stop is left open, blood and a fall are not") {
  const struct {
    const char* name;
    void (*call)(InventedDay&);
    std::size_t left;
  } rows[] = {
      {"blisters",
       [](InventedDay& day) {
         day.did({ActionKind::blisters, Foot::lf});
       },
       1},
      {"sore mouth", [](InventedDay& day) { day.did({ActionKind::sore_mouth}); }, 1},
      {"swelling of no claw",
       [](InventedDay& day) {
         day.found({Foot::lh, Claw::not_called, Lesion::sw});
         day.found({Foot::rh, Claw::not_called, Lesion::sw});
       },
       2},
      {"fever as the reason",
       [](InventedDay& day) {
         day.last_turn().end = TurnEnd::not_done;
         day.last_turn().end_reason = "fever";
       },
       1},
      {"foul",
       [](InventedDay& day) {
         day.found({Foot::lh, Claw::none, Lesion::ip});
       },
       1},
      {"foul treated by the vet's plan",
       [](InventedDay& day) {
         day.found({Foot::lh, Claw::none, Lesion::ip});
         day.did({ActionKind::vet_plan, Foot::lh});
       },
       0},
      {"blisters and the vet",
       [](InventedDay& day) {
         day.did({ActionKind::blisters, Foot::lf});
         day.did({ActionKind::vet});
       },
       0},
      {"bleeding",
       [](InventedDay& day) {
         day.did({ActionKind::bleeding, Foot::lf});
       },
       0},
      {"went down", [](InventedDay& day) { day.did({ActionKind::went_down}); }, 0},
      {"a sole ulcer",
       [](InventedDay& day) {
         day.found({Foot::lh, Claw::outside, Lesion::su});
       },
       0},
  };

  for (const auto& row : rows) {
    InventedDay day("Hollow Meadow");
    day.turn("412");
    row.call(day);
    const std::vector<EarlierStop> left = left_of(day);
    const auto open = std::count_if(left.begin(), left.end(),
                                    [](const EarlierStop& stop) { return !stop.is_settled_alone; });
    CHECK_MESSAGE(static_cast<std::size_t>(open) == row.left, row.name);
  }
}

TEST_CASE("what only words tell, and that both claws hurt, is left open too") {
  const struct {
    const char* name;
    void (*call)(InventedDay&);
    const char* told;
  } rows[] = {{"refused line",
               [](InventedDay& day) {
                 day.last_turn().end = TurnEnd::unfinished;
                 day.last_turn().end_reason = "\"412 LH pus abov the coronet\" was not understood";
               },
               "not finished: \"412 LH pus abov the coronet\" was not understood"},
              {"note", [](InventedDay& day) { day.last_turn().note = "pus above the horn LH"; },
               "said in a note: pus above the horn LH"},
              {"came for", [](InventedDay& day) { day.last_turn().reason_words = "fever"; },
               "came for: fever"},
              {"names the vet",
               [](InventedDay& day) { day.last_turn().note = "the vet should see it next week"; },
               "said in a note: the vet should see it next week"},
              {"both claws",
               [](InventedDay& day) {
                 day.found({Foot::rh, Claw::outside, Lesion::su});
                 day.found({Foot::rh, Claw::inside, Lesion::su});
               },
               "both claws hurt, no good one for a block"}};

  for (const auto& row : rows) {
    InventedDay then("Hollow Meadow");
    then.turn("412");
    row.call(then);
    InventedDay day("Hollow Meadow");
    day.known("412");
    day.input().earlier_stops = left_of(then);
    for (EarlierStop& stop : day.input().earlier_stops) stop.on = day.input().visit.day - 7;
    const std::string text = text_of(vet_box(view_of(day.input(), english_wording())));
    CHECK_MESSAGE(holds(text, row.told), row.name << text);
    CHECK_MESSAGE(holds(text, "Tue 17 Nov"), row.name << text);
  }
}

TEST_CASE("that both claws hurt is over once somebody decided, be it to go ahead") {
  InventedDay then("Hollow Meadow");
  then.turn("412");
  then.found({Foot::rh, Claw::outside, Lesion::su});
  then.found({Foot::rh, Claw::inside, Lesion::su});
  then.warned(Rank::ask, "Both claws hurt.", "go ahead");
  then.input().warnings.back().shown.warning.rule = "both-claws-painful";
  then.input().warnings.back().shown.warning.foot = Foot::rh;
  CHECK(left_of(then).empty());
}

TEST_CASE("a sign for which a Stop stands is not told besides") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.did({ActionKind::bone_showing, Foot::lh});
  std::vector<EarlierStop> stops = left_of(day);
  REQUIRE(stops.size() == 1);
  stops.front().was_only_seen = false;
  CHECK(left_of(day, stops).empty());
}

TEST_CASE("an earlier sign stands in the vet's box with its day, though nobody stopped for it") {
  InventedDay then("Hollow Meadow");
  then.turn("412");
  then.did({ActionKind::blisters, Foot::lf});
  InventedDay day("Hollow Meadow");
  day.known("412");
  day.input().earlier_stops = left_of(then);
  day.input().earlier_stops.front().on = day.input().visit.day - 7;
  const std::string text = text_of(vet_box(view_of(day.input(), english_wording())));
  CHECK_MESSAGE(holds(text,
                      "# 412  Left front, seen Tue 17 Nov, and nobody said since what is there: "
                      "blisters.\n"),
                text);
}

TEST_CASE("earlier signs that may be notifiable are told first and go with a cow who was sold") {
  InventedDay then("Hollow Meadow");
  then.turn("412");
  then.did({ActionKind::fever});
  then.did({ActionKind::sore_mouth});

  const struct {
    const char* left;
    const char* told;
  } rows[] = {{"",
               "412 (fever; sore mouth): ring the vet or the "
               "authority now"},
              {"412 sold", "Sold, Tue 24 Nov: tell the buyer and the authority."},
              {"412 died", "Died, Tue 24 Nov: tell the authority."}};

  for (const auto& row : rows) {
    InventedDay day("Hollow Meadow");
    CowRow& cow = day.known("412");
    day.input().earlier_stops = left_of(then);
    REQUIRE(day.input().earlier_stops.size() == 2);
    if (*row.left != 0) {
      cow.left_on = day.input().visit.day;
      cow.left_words = row.left;
    }
    const std::string text = text_of(farmers_page(view_of(day.input(), english_wording())));
    CHECK_MESSAGE(text.find("# COULD BE NOTIFIABLE") < text.find("# VET TODAY"), text);
    CHECK_MESSAGE(holds(text, row.told), text);
    CHECK_MESSAGE(holds(text, "nobody said since what is there: fever and sore mouth.\n"), text);
  }
}

TEST_CASE("a cow with signs that may be notifiable who leaves that day stays in the vet's box") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.did({ActionKind::fever});
  day.did({ActionKind::sore_mouth});
  day.known("412").left_on = day.input().visit.day;
  day.known("412").left_words = "412 sold";
  const std::string text = text_of(vet_box(view_of(day.input(), english_wording())));
  CHECK_MESSAGE(holds(text, "tell the buyer and the authority"), text);
}

}  // namespace evenclaw
