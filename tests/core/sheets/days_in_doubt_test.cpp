#include "core/sheets/days_in_doubt.hpp"

#include <doctest/doctest.h>

#include <string>

#include "core/sheets/farmers_page.hpp"
#include "core/trade/follow_up_rules.hpp"
#include "tests/core/sheets/invented_day.hpp"
#include "tests/core/sheets/sheet_text.hpp"

namespace evenclaw {

namespace {

/// 412 has a wrap or a block put on, said to come off in so many days, and was asked about that.
std::string page(const FollowUpRule& rule, int days, const std::string& decision) {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  const bool is_wrap = rule.kind == TaskKind::wrap_off;
  const Claw claw = is_wrap ? Claw::none : Claw::inside;
  day.did({is_wrap ? ActionKind::wrap_on : ActionKind::block_on, Foot::lh, claw, "", days});
  day.task_on(Foot::lh, claw, rule.kind, rule.owner, days).rule = rule.slug;
  day.warned(Rank::ask, "Left hind: off in so many days?", decision);
  Warning& warning = day.input().warnings.back().shown.warning;
  warning.rule = "comes-off-on-that-day";
  warning.foot = Foot::lh;
  warning.claw = claw;
  return text_of(farmers_page(view_of(day.input(), english_wording())));
}

}  // namespace

TEST_CASE("a wrap said to come off too late stands by its last good day while nobody answered") {
  const std::string text = page(wrap_off_rule, 30, "");
  CAPTURE(text);
  CHECK(holds(text, "By Tue 1 Dec"));
  CHECK(holds(text,
              "412  [ ] wrap off left hind (Thu 24 Dec was said, and nobody answered whether that "
              "is meant)"));
  CHECK_FALSE(holds(text, "By Thu 24 Dec"));
}

TEST_CASE("a block said to come off soon keeps that day, and is told as asked") {
  const std::string text = page(block_off_rule, 5, "");
  CAPTURE(text);
  CHECK(holds(text, "By Sun 29 Nov"));
  CHECK(holds(text, "inside claw (Sun 29 Nov was said, and nobody answered"));
}

TEST_CASE("a day that somebody answered for is told as it was said") {
  const std::string text = page(wrap_off_rule, 30, "go ahead");
  CHECK(holds(text, "By Thu 24 Dec"));
  CHECK_FALSE(holds(text, "nobody answered"));
}

}  // namespace evenclaw
