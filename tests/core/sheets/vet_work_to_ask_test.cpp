#include "core/sheets/vet_work_to_ask.hpp"

#include <doctest/doctest.h>

#include "core/sheets/farmers_page.hpp"
#include "tests/core/sheets/invented_day.hpp"
#include "tests/core/sheets/sheet_text.hpp"

namespace evenclaw {

namespace {

InventedDay day_opened_by(ByWhom whom) {
  InventedDay day("Hollow Meadow");
  day.turn("901");
  day.did({ActionKind::opened, Foot::lh, Claw::outside}).by_whom = whom;
  day.rest_fine();
  return day;
}

std::size_t asked_of(InventedDay& day) {
  return vet_work_to_ask(view_of(day.input(), english_wording())).size();
}

}  // namespace

TEST_CASE(
    "where the vet did the work it is asked whether he gave anything, and nothing is denied") {
  InventedDay day = day_opened_by(ByWhom::vet);
  const std::string page = text_of(farmers_page(view_of(day.input(), english_wording())));
  CHECK_MESSAGE(holds(page, "ask the vet whether he gave anything"), page);
  CHECK_MESSAGE(holds(page, "MILK AND MEAT: ASK FIRST\n# 901 "), page);
  CHECK_MESSAGE(!holds(page, "Nothing was given"), page);
  CHECK_MESSAGE(!holds(page, "Nothing is left to do"), page);
}

TEST_CASE("it is not asked of the work of others, nor where it was told what he gave") {
  InventedDay others = day_opened_by(ByWhom::farmer);
  CHECK(asked_of(others) == 0);
  for (const ActionKind told : {ActionKind::no_withdrawal, ActionKind::injected}) {
    InventedDay day = day_opened_by(ByWhom::vet);
    day.did({told});
    CHECK(asked_of(day) == 0);
  }
}

}  // namespace evenclaw
