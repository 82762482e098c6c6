#include "core/sheets/due_sheet.hpp"

#include <doctest/doctest.h>

#include "core/paper/text.hpp"
#include "tests/core/sheets/approved.hpp"
#include "tests/core/sheets/invented_day.hpp"

namespace evenclaw {

namespace {

Document due_of(const VisitSheetInput& input) {
  return due_sheet(
      {input.herd_name, input.printed, input.version, input.rows.tasks, input.rows.cows});
}

}  // namespace

TEST_CASE("a due list that people have read stays as it is") {
  CHECK(difference_to_approved("due.txt", to_plain_text(due_of(day_with_forty_tasks()))) == "");
}

TEST_CASE("late, now and coming are told apart by overdue and earliest") {
  InventedDay day("Hollow Meadow");
  day.task("1", TaskKind::wrap_off, Owner::farmer, 0).overdue = day.input().printed;
  day.task("2", TaskKind::wrap_off, Owner::farmer, 3).earliest = day.input().printed;
  day.task("3", TaskKind::wrap_off, Owner::farmer, 3);
  const std::string text = to_plain_text(due_of(day.input()));
  const auto late = text.find("Late (1 task on 1 cow)");
  const auto now = text.find("To be done now (1 task on 1 cow)");
  const auto coming = text.find("Coming (1 task on 1 cow)");
  REQUIRE(coming != std::string::npos);
  CHECK(late < text.find("1  [ ] wrap off"));
  CHECK(now < text.find("2  [ ] wrap off"));
  CHECK(coming < text.find("3  [ ] wrap off"));
  CHECK(late < now);
  CHECK(now < coming);
}

TEST_CASE("vet tasks are due like all others") {
  InventedDay day("Hollow Meadow");
  day.task("412", TaskKind::vet, Owner::vet, 0);
  const std::string text = to_plain_text(due_of(day.input()));
  CHECK(text.find("(today, for the vet)\n412  [ ] vet to see her") != std::string::npos);
}

TEST_CASE("milk and meat that are held back stand before what is late") {
  InventedDay day("Hollow Meadow");
  day.task("1", TaskKind::wrap_off, Owner::farmer, -9);
  day.task("2", TaskKind::withdrawal_end, Owner::farmer, 2);
  const std::string text = to_plain_text(due_of(day.input()));
  CHECK(text.find("Milk and meat held back (1 task on 1 cow)") < text.find("Late (1 task"));
}

TEST_CASE("cows to be careful with stand first, whether anything of theirs is due or not") {
  InventedDay day("Hollow Meadow");
  day.task("2", TaskKind::wrap_off, Owner::farmer, -9);
  DueSheetInput input{day.input().herd_name, day.input().printed, day.input().version,
                      day.input().rows.tasks, day.input().rows.cows};
  HandlingRow kicks;
  kicks.cow = input.cows.front().cow;
  HandlingRow over = kicks;
  over.what = Handling::jumps;
  over.over_on = input.today;
  input.handling = {kicks, over};
  const std::string text = to_plain_text(due_sheet(input));
  const auto careful = text.find("Careful in the crush");
  REQUIRE(careful != std::string::npos);
  CHECK(careful < text.find("Late (1 task"));
  CHECK(text.find("Kicks.") != std::string::npos);
  CHECK(text.find("jumps") == std::string::npos);
}

TEST_CASE("nothing due is said") {
  InventedDay day("Hollow Meadow");
  CHECK(to_plain_text(due_of(day.input())).find("Nothing is due.") != std::string::npos);
}

}  // namespace evenclaw
