#include "core/sheets/visit_lines.hpp"

#include <doctest/doctest.h>

#include <algorithm>

#include "tests/core/sheets/invented_day.hpp"

namespace evenclaw {

namespace {

std::vector<VisitLine> lines_telling(const VisitSheetInput& input, LineTells tells) {
  std::vector<VisitLine> lines = visit_lines(input);
  std::erase_if(lines, [&](const VisitLine& line) { return line.tells != tells; });
  return lines;
}

}  // namespace

TEST_CASE("each thing of the visit is a line, and each line names herd, day and cow") {
  const VisitSheetInput day = three_cow_day();
  const auto lines = visit_lines(day);
  const Rows& rows = day.rows;
  CHECK(lines.size() == rows.turns.size() + rows.feet.size() + rows.findings.size() +
                            rows.actions.size() + rows.measures.size() + rows.tasks.size() +
                            day.warnings.size() + rows.doubts.size());
  for (const VisitLine& line : lines) {
    CHECK(line.herd == "Hollow Meadow");
    CHECK(line.day == day.visit.day);
    CHECK_FALSE(line.cow.empty());
  }
}

TEST_CASE("a finding stands with its code, place, degree and stage") {
  const auto lines = lines_telling(three_cow_day(), LineTells::finding);
  REQUIRE(lines.size() == 2);
  CHECK(lines[0].cow == "412");
  CHECK(lines[0].what == "WLA");
  CHECK(lines[0].words == "white line abscess, heel, bad (WLA)");
  CHECK(lines[0].claw == Claw::outside);
  CHECK(lines[0].degree == Degree::bad);
  CHECK(lines[1].stage == DdStage::raw);
}

TEST_CASE("cows stand by number and tasks behind them") {
  const auto lines = visit_lines(three_cow_day());
  CHECK(lines.front().cow == "77");
  CHECK(lines.back().tells == LineTells::task);
}

TEST_CASE("a cow without a number is known by her looks, one in doubt by her mark") {
  const auto lines = lines_telling(day_with_doubts(), LineTells::cow);
  const auto has = [&](const std::string& cow, const std::string& looks) {
    return std::any_of(lines.begin(), lines.end(), [&](const VisitLine& line) {
      return line.cow == cow && line.looks == looks;
    });
  };
  CHECK(has("", "brown heifer, white star"));
  CHECK(has("513 or 531?", ""));
}

TEST_CASE("animals counted together are a line of their own, without a cow") {
  InventedDay day("Hollow Meadow");
  BatchRow row;
  row.animals = AnimalKind::heifers;
  row.counted = 12;
  row.together = 11;
  day.rows().batches.push_back(row);
  const auto lines = visit_lines(day.input());
  REQUIRE(lines.size() == 1);
  CHECK(lines[0].tells == LineTells::together);
  CHECK(lines[0].what == "heifers");
  CHECK(lines[0].animals == 11);
  CHECK(lines[0].cow.empty());
}

TEST_CASE("who called a cow stands on her line") {
  VisitSheetInput day = three_cow_day();
  const PersonId ben{uuid_derived("Ben")};
  day.people = {{ben, "Ben"}};
  day.rows.turns[0].caller = ben;
  const auto lines = lines_telling(day, LineTells::cow);
  const auto of_412 = std::find_if(lines.begin(), lines.end(),
                                   [](const VisitLine& line) { return line.cow == "412"; });
  REQUIRE(of_412 != lines.end());
  CHECK(of_412->caller == "Ben");
}

TEST_CASE("a note, an Ask and a Stop are lines with the check, the answer and who is told") {
  InventedDay day("Hollow Meadow");
  day.turn("412").note = "kicked the whole time";
  const auto warned = [&](Rank rank, const std::string& rule, const std::string& decision) {
    day.warned(rank, "Words of " + rule + '.', decision);
    day.input().warnings.back().shown.warning.rule = rule;
  };
  warned(Rank::note, "near-calving", "");
  warned(Rank::ask, "it-stinks", "412 vet");
  warned(Rank::stop, "down-in-the-crush", "");
  warned(Rank::stop, "both-claws-blocked", "go ahead");
  const auto notes = lines_telling(day.input(), LineTells::note);
  REQUIRE(notes.size() == 2);
  CHECK(notes[0].words == "kicked the whole time");
  CHECK(notes[0].what.empty());
  CHECK(notes[1].what == "near-calving");
  CHECK(notes[1].told_to == ToldTo::farmer);
  const auto asks = lines_telling(day.input(), LineTells::ask);
  REQUIRE(asks.size() == 1);
  CHECK(asks[0].answer == "412 vet");
  CHECK_FALSE(asks[0].told_to.has_value());
  const auto stops = lines_telling(day.input(), LineTells::stop);
  REQUIRE(stops.size() == 2);
  CHECK(stops[0].words == "Words of down-in-the-crush.");
  CHECK(stops[0].answer.empty());
  CHECK(stops[0].told_to == ToldTo::farmer_and_vet);
  CHECK(stops[1].answer == "go ahead");
  CHECK(stops[1].told_to == ToldTo::farmer);
}

TEST_CASE("who was not seen, what was told, is still asked or was removed is a line each") {
  InventedDay day("Hollow Meadow");
  day.known("77");
  VisitSheetInput& input = day.input();
  input.not_seen = {{day.id_of("77"), "77", "wrap off left hind is due"}};
  input.told = {"412 sold"};
  input.asked = {{"66", "Which 66?"}};
  input.removed = {{"12", input.visit.day + 3}};
  EarlierStop stop;
  stop.cow = day.id_of("77");
  stop.on = input.visit.day - 7;
  stop.warning.rank = Rank::stop;
  stop.warning.rule = "swollen-on-one-side";
  input.earlier_stops = {stop};
  const auto lines = visit_lines(input);
  REQUIRE(lines.size() == 5);
  CHECK(lines[0].tells == LineTells::stop);
  CHECK(lines[0].cow == "77");
  CHECK(lines[0].by_day == stop.on);
  CHECK(lines[0].told_to == ToldTo::farmer_and_vet);
  CHECK(lines[1].tells == LineTells::not_seen);
  CHECK(lines[1].words == "wrap off left hind is due");
  CHECK(lines[2].tells == LineTells::removed);
  CHECK(lines[2].by_day == input.visit.day + 3);
  CHECK(lines[3].tells == LineTells::question);
  CHECK(lines[3].cow == "66");
  CHECK(lines[4].tells == LineTells::told);
  CHECK(lines[4].words == "412 sold");
}

TEST_CASE("of a medicine on the list and a time told of it the line has the later end") {
  InventedDay day("Hollow Meadow");
  day.turn("525");
  ActionRow& spray = day.did({ActionKind::spray, Foot::lh, Claw::none, "whitemix"});
  spray.withdrawal = WithdrawalKnown::held_back;
  spray.milk_till = spray.day + 2;
  spray.meat_till = spray.day + 5;
  day.did({ActionKind::milk_withheld}).milk_till = day.input().visit.day + 4;
  day.did({ActionKind::meat_withheld}).meat_till = day.input().visit.day + 3;
  const auto lines = lines_telling(day.input(), LineTells::act);
  REQUIRE(lines.size() == 3);
  CHECK(lines[0].milk_till == day.input().visit.day + 4);
  CHECK(lines[0].meat_till == day.input().visit.day + 5);
}

}  // namespace evenclaw
