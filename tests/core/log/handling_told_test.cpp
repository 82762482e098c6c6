#include "core/log/handling_told.hpp"

#include <doctest/doctest.h>

#include "tests/core/log/farm.hpp"

namespace evenclaw {

namespace {

TurnRecorded said(Farm& farm, std::string_view on, std::vector<ActionKind> kinds) {
  TurnRecorded body = farm.turn_body(cow_412, on, {nothing_found(Foot::lh)});
  for (const ActionKind kind : kinds) body.turn.actions.push_back(act(kind));
  return body;
}

}  // namespace

TEST_CASE("a cow that kicked once is known to kick until somebody says that she no longer does") {
  Farm farm;
  farm.turn(said(farm, "2026-09-01", {ActionKind::kicks}));
  farm.turn(said(farm, "2026-10-01", {}));
  Rows rows = farm.rows_of(cow_412);
  REQUIRE(rows.handling.size() == 1);
  CHECK(rows.handling[0].since == day("2026-09-01"));
  CHECK(rows.handling[0].last_said == day("2026-09-01"));
  CHECK_FALSE(rows.handling[0].over_on);
  farm.turn(said(farm, "2026-11-01", {ActionKind::kicks_no_more}));
  rows = farm.rows_of(cow_412);
  CHECK(rows.handling.at(0).over_on == day("2026-11-01"));
}

TEST_CASE("said again it is known longer, said again after it was over it begins anew") {
  Farm farm;
  farm.turn(said(farm, "2026-09-01", {ActionKind::jumps}));
  farm.turn(said(farm, "2026-10-01", {ActionKind::jumps}));
  CHECK(farm.rows_of(cow_412).handling.at(0).since == day("2026-09-01"));
  CHECK(farm.rows_of(cow_412).handling.at(0).last_said == day("2026-10-01"));
  farm.turn(said(farm, "2026-11-01", {ActionKind::jumps_no_more}));
  farm.turn(said(farm, "2026-12-01", {ActionKind::jumps}));
  CHECK(farm.rows_of(cow_412).handling.at(0).since == day("2026-12-01"));
  CHECK_FALSE(farm.rows_of(cow_412).handling.at(0).over_on);
}

TEST_CASE("one thing that is over leaves the others") {
  Farm farm;
  farm.turn(said(farm, "2026-09-01", {ActionKind::kicks, ActionKind::needs_hoist}));
  farm.turn(said(farm, "2026-10-01", {ActionKind::hoist_no_more}));
  CHECK(spoken(standing_in(farm.rows_of(cow_412).handling)) == "kicks");
}

TEST_CASE("what was never said of her cannot be over") {
  Farm farm;
  farm.turn(said(farm, "2026-09-01", {ActionKind::lies_down_no_more}));
  CHECK(farm.rows_of(cow_412).handling.empty());
}

TEST_CASE("a turn that is corrected tells no more what it told by mistake") {
  Farm farm;
  const EntryId wrong = farm.turn(said(farm, "2026-09-01", {ActionKind::kicks}));
  farm.correct(farm.entry(wrong), said(farm, "2026-09-01", {}));
  CHECK(farm.rows_of(cow_412).handling.empty());
}

TEST_CASE("what is told of her as news holds like what is called, in the order of the days") {
  Farm farm;
  TaskClosedBody news;
  news.cow = cow_412;
  news.day = day("2026-08-01");
  news.news = News::kicks;
  farm.write(news);
  CHECK(spoken(standing_in(farm.rows_of(cow_412).handling)) == "kicks");
  farm.turn(said(farm, "2026-09-01", {ActionKind::kicks_no_more}));
  CHECK(farm.rows_of(cow_412).handling.at(0).over_on == day("2026-09-01"));
  news.day = day("2026-10-01");
  farm.write(news);
  CHECK(farm.rows_of(cow_412).handling.at(0).since == day("2026-10-01"));
}

}  // namespace evenclaw
