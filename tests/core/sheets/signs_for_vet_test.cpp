#include "core/sheets/signs_for_vet.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "core/sheets/notifiable.hpp"
#include "core/trade/check.hpp"
#include "tests/core/sheets/invented_day.hpp"

namespace evenclaw {

namespace {

constexpr ActionKind all_illness[] = {ActionKind::sore_mouth, ActionKind::blisters,
                                      ActionKind::fever};

/// Which of two cows may have a notifiable disease: "412 513".
std::string notifiable(const std::vector<ActionKind>& first,
                       const std::vector<ActionKind>& second) {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  for (const ActionKind sign : first) day.did({sign});
  day.turn("513");
  for (const ActionKind sign : second) day.did({sign});
  const VisitView view = view_of(day.input(), english_wording());
  std::string cows;
  for (const CowSeen& cow : view.cows) {
    const bool is_one = may_be_notifiable(view, cow.cow);
    if (is_one) cows += (cows.empty() ? "" : " ") + view.names.number(cow.cow);
  }
  return cows;
}

}  // namespace

TEST_CASE("every check in the table of signs is one, and every row names its source") {
  for (const SignForVet& sign : signs_for_vet()) {
    CAPTURE(std::string(sign.check));
    CHECK_FALSE(sign.source.empty());
    CHECK((sign.seen || sign.found || !sign.check.empty()));
    CHECK_FALSE((sign.seen && sign.found));
    const auto checks = all_checks();
    const bool is_check = std::any_of(checks.begin(), checks.end(), [&](const CheckRule& rule) {
      const bool is_told = rule.rank != Rank::note || rule.slug == blocked_again_rule;
      return rule.slug == sign.check && is_told;
    });
    CHECK(is_check == !sign.check.empty());
  }
}

TEST_CASE("a sign stands in the table once") {
  const auto signs = signs_for_vet();
  for (auto one = signs.begin(); one != signs.end(); ++one) {
    CHECK(std::none_of(one + 1, signs.end(), [&](const SignForVet& other) {
      return one->seen == other.seen && one->found == other.found && one->check == other.check &&
             one->is_above_both == other.is_above_both;
    }));
  }
}

TEST_CASE("of two cows with signs of a disease both are named, whichever was called first") {
  using K = ActionKind;
  CHECK(notifiable({K::fever}, {K::blisters}) == "412 513");
  CHECK(notifiable({K::blisters}, {K::fever}) == "412 513");
  CHECK(notifiable({K::sore_mouth}, {K::blisters}) == "412 513");
  CHECK(notifiable({K::sore_mouth, K::fever}, {K::fever}) == "412 513");
}

TEST_CASE("one sign alone, and fever in two cows, is not yet taken for a notifiable disease") {
  for (const ActionKind sign : all_illness) CHECK(notifiable({sign}, {}).empty());
  CHECK(notifiable({ActionKind::fever}, {ActionKind::fever}).empty());
  CHECK(notifiable({ActionKind::fever, ActionKind::blisters}, {}) == "412");
}

TEST_CASE("fever told as the reason why she was not done counts as fever called of her") {
  const struct {
    const char* reason;
    bool is_notifiable;
  } rows[] = {{"fever", true}, {"rope broke", false}, {"\"feverr\" not understood", false}};

  for (const auto& row : rows) {
    InventedDay day("Hollow Meadow");
    TurnRow& turn = day.turn("412");
    turn.end = TurnEnd::not_done;
    turn.end_reason = row.reason;
    day.turn("513");
    day.did({ActionKind::blisters});
    const VisitView view = view_of(day.input(), english_wording());
    for (const CowSeen& cow : view.cows) {
      CHECK_MESSAGE(may_be_notifiable(view, cow.cow) == row.is_notifiable, row.reason);
    }
  }
}

TEST_CASE("a fall is heard in the words why her turn was broken off, in either language") {
  struct Row {
    const char* words;
    bool is_fall;
  };

  const Row rows[] = {{"went down", true},
                      {"she is going down, let her out", true},
                      {"fell on her knees", true},
                      {"sie liegt am Boden", true},
                      {"Rope broke", false},
                      {"down the road", false},
                      {"", false}};
  for (const Row& row : rows) {
    CAPTURE(row.words);
    InventedDay day("Hollow Meadow");
    TurnRow& turn = day.turn("412");
    turn.end = TurnEnd::unfinished;
    turn.end_reason = row.words;
    const VisitView view = view_of(day.input(), english_wording());
    CHECK(signs_of_her(view.cows.at(0)).empty() == !row.is_fall);
    CHECK(signs_of(view, view.cows.at(0), std::nullopt).empty() == !row.is_fall);
  }
}

TEST_CASE("a fall called as such is told once, though the words say it too") {
  InventedDay day("Hollow Meadow");
  day.turn("412").end = TurnEnd::unfinished;
  day.last_turn().end_reason = "went down";
  day.did({ActionKind::went_down});
  const VisitView view = view_of(day.input(), english_wording());
  CHECK(signs_of(view, view.cows.at(0), std::nullopt) ==
        std::vector<std::string>{"went down in the crush"});
  CHECK(signs_of_her(view.cows.at(0)).size() == 1);
}

}  // namespace evenclaw
