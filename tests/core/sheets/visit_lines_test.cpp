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
                            rows.actions.size() + rows.measures.size() + rows.tasks.size());
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

}  // namespace evenclaw
