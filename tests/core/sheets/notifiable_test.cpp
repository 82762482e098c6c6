#include "core/sheets/notifiable.hpp"

#include <doctest/doctest.h>

#include <string>

#include "core/sheets/farmers_page.hpp"
#include "tests/core/sheets/invented_day.hpp"
#include "tests/core/sheets/sheet_text.hpp"

namespace evenclaw {

namespace {

/// A sign seen of 412 so many days before the visit, for which the vet was asked.
EarlierStop asked_for(InventedDay& day, ActionKind sign, int days_ago) {
  EarlierStop stop;
  stop.cow = day.known("412").cow;
  stop.turn = EntryId{uuid_derived("earlier turn")};
  stop.on = day.input().visit.day - days_ago;
  stop.warning.rule = std::string(word_of(sign));
  stop.warning.rank = Rank::ask;
  stop.warning.words = stop.warning.rule;
  stop.was_only_seen = true;
  stop.is_settled_alone = true;
  return stop;
}

std::string page_of(const InventedDay& day) {
  InventedDay copy = day;
  return text_of(farmers_page(view_of(copy.input(), english_wording())));
}

}  // namespace

TEST_CASE("signs of an earlier visit and of this one are named together") {
  InventedDay day("Hollow Meadow");
  day.input().earlier_stops = {asked_for(day, ActionKind::sore_mouth, 1)};
  day.turn("413");
  day.did({ActionKind::fever});
  day.turn("414");
  day.did({ActionKind::blisters, Foot::lh});
  const std::string page = page_of(day);
  CHECK_MESSAGE(holds(page,
                      "412 (sore mouth, seen Mon 23 Nov); 413 (fever); 414 (blisters): "
                      "ring the vet or the authority now"),
                page);
}

TEST_CASE("one sign of an earlier visit for which the vet was asked raises no alarm alone") {
  InventedDay day("Hollow Meadow");
  day.input().earlier_stops = {asked_for(day, ActionKind::sore_mouth, 1)};
  const VisitView view = view_of(day.input(), english_wording());
  CHECK_FALSE(may_be_notifiable(view, day.id_of("412")));
  CHECK_MESSAGE(!holds(page_of(day), "sore mouth"), page_of(day));
}

TEST_CASE("an earlier sign that is settled alone makes no pair after four weeks") {
  for (const auto& [days, is_one] : {std::pair(paired_days, true), {paired_days + 1, false}}) {
    InventedDay day("Hollow Meadow");
    day.input().earlier_stops = {asked_for(day, ActionKind::sore_mouth, days)};
    day.turn("413");
    day.did({ActionKind::fever});
    const VisitView view = view_of(day.input(), english_wording());
    CHECK(may_be_notifiable(view, day.id_of("413")) == is_one);
  }
}

TEST_CASE("a cow with signs for whom the vet was asked stays named when she was sold") {
  InventedDay day("Hollow Meadow");
  EarlierStop fever = asked_for(day, ActionKind::fever, 1);
  EarlierStop mouth = asked_for(day, ActionKind::sore_mouth, 1);
  fever.may_be_notifiable = mouth.may_be_notifiable = true;
  day.input().earlier_stops = {fever, mouth};
  day.known("412").left_on = day.input().visit.day;
  day.known("412").left_words = "412 sold";
  const std::string page = page_of(day);
  CHECK_MESSAGE(holds(page, "# COULD BE NOTIFIABLE"), page);
  CHECK_MESSAGE(holds(page, "tell the buyer and the authority"), page);
}

}  // namespace evenclaw
