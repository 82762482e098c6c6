#include "core/trade/farm_line/change_line.hpp"

#include <doctest/doctest.h>

namespace evenclaw {

namespace {

const Day today = day_from_text("2026-11-24").value();

ChangeLine read(std::string_view text, const Language& language = english()) {
  const auto line = read_change_line(text, today, language, 1);
  REQUIRE_MESSAGE(line, text << ": " << line.faults().front().message);
  REQUIRE(line->has_value());
  return **line;
}

Fault refused(std::string_view text) {
  const auto line = read_change_line(text, today, english(), 2);
  REQUIRE_FALSE_MESSAGE(line, text);
  return line.faults().front();
}

}  // namespace

TEST_CASE("a change is what was altered and how, why, when decided, when finished, for whom") {
  const ChangeLine line = read(
      "footbath: copper instead of formalin, fresh every day; bad visit; decided 2026-10-01; "
      "finished 20 Oct; whole herd");
  CHECK(line.driver == ChangeDriver::footbath);
  CHECK(line.altered == "copper instead of formalin, fresh every day");
  CHECK(line.told.why == ChangeWhy::bad_visit);
  CHECK(line.told.decided == day_from_text("2026-10-01"));
  CHECK(line.told.state == ChangeState::finished);
  CHECK(line.told.finished == day_from_text("2026-10-20"));
  CHECK(line.told.reach == ChangeReach::whole_herd);
}

TEST_CASE("each reason is kept as itself, and any other in its words") {
  struct Row {
    const char* words;
    ChangeWhy why;
  };

  const Row rows[] = {{"planned", ChangeWhy::planned},
                      {"after a bad visit", ChangeWhy::bad_visit},
                      {"the vet advised", ChangeWhy::vet_advised},
                      {"rebuilt anyway", ChangeWhy::rebuilt_anyway},
                      {"because the scraper broke", ChangeWhy::other}};
  for (const Row& row : rows) {
    CAPTURE(row.words);
    CHECK(read(std::string("floor: rubber; ") + row.words).told.why == row.why);
  }
  CHECK(read("floor: rubber; because the scraper broke").told.why_words == "the scraper broke");
  CHECK(read("floor: rubber").told.why == ChangeWhy::not_told);
}

TEST_CASE("a change that is known is told of by what it altered, or by nothing but the clause") {
  const ChangeLine line = read("footbath finished 20 Nov");
  CHECK(line.driver == ChangeDriver::footbath);
  CHECK(line.altered.empty());
  CHECK(line.told.finished == day_from_text("2026-11-20"));
  CHECK_FALSE(read("planned").driver.has_value());
  CHECK(read("finished yesterday").told.finished == today - 1);
  CHECK(read("still going on").told.state == ChangeState::going_on);
  CHECK(read("scrap footbath").scrapped);
}

TEST_CASE("what concerns some animals names them") {
  CHECK(read("cubicles: new mats; only the dry cows").told.animals == "the dry cows");
  CHECK(read("cubicles: new mats; group high yielders").told.reach == ChangeReach::group);
}

TEST_CASE("a day without a year is the last such day, and one that has not come is refused") {
  CHECK(read("footbath: copper; decided 24 Dec").told.decided == day_from_text("2025-12-24"));
  CHECK(read("footbath: copper; decided 1 Oct 2024").told.decided == day_from_text("2024-10-01"));
  CHECK(refused("footbath: copper; finished 2026-12-01").slug == "date-in-future");
  CHECK(refused("footbath: copper; decided soon").message == "on which day?");
}

TEST_CASE("what was altered is said first, and nothing is guessed behind it") {
  CHECK(refused("new mats in the old shed").message == "what was altered?");
  CHECK(refused("cubicles: new mats; planned; and so on").message == "this is not understood");
  CHECK(refused("footbath: copper; planned soon").token == "soon");
  CHECK(refused("scrap it").message == "which change was none?");
}

TEST_CASE("the same lines are called in German") {
  const ChangeLine line = read(
      "Klauenbad: Kupfer; geplant; beschlossen 1. Oktober; fertig heute; ganze Herde", german());
  CHECK(line.driver == ChangeDriver::footbath);
  CHECK(line.told.why == ChangeWhy::planned);
  CHECK(line.told.decided == day_from_text("2026-10-01"));
  CHECK(line.told.finished == today);
  CHECK(line.told.reach == ChangeReach::whole_herd);
}

}  // namespace evenclaw
