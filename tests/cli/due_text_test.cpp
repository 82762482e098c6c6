#include "cli/due_text.hpp"

#include <doctest/doctest.h>

#include <string>

namespace evenclaw::cli {

namespace {

const Day today = day_from_text("2026-11-25").value();

DueTask task_of(std::string cow, std::string words, DueState state) {
  DueTask task;
  task.herd_name = "Thornby Hollow";
  task.cow_said = std::move(cow);
  task.words = std::move(words);
  task.state = state;
  task.due = today;
  task.overdue = today - 2;
  return task;
}

DueList list_of(std::vector<DueTask> tasks) {
  DueList list;
  list.today = today;
  list.tasks = std::move(tasks);
  return list;
}

CarefulWith kicks(std::string cow) {
  CarefulWith with;
  with.cow_said = std::move(cow);
  with.words = "kicks";
  with.herd_name = "Thornby Hollow";
  with.last_said = today - 28;
  return with;
}

std::size_t at(const std::string& text, std::string_view part) {
  CAPTURE(text);
  const std::size_t found = text.find(part);
  REQUIRE(found != std::string::npos);
  return found;
}

}  // namespace

TEST_CASE("What is late stands before what may be done, and that before what is coming") {
  const std::string text = due_text(
      list_of({task_of("414", "look", DueState::coming), task_of("413", "block off", DueState::due),
               task_of("412", "wrap off", DueState::overdue)}));
  CHECK(at(text, "Late\n") < at(text, "412"));
  CHECK(at(text, "412") < at(text, "May be done now\n"));
  CHECK(at(text, "413") < at(text, "Coming\n"));
  CHECK(at(text, "Coming\n") < at(text, "414"));
}

TEST_CASE(
    "Milk that is held back stands before all work, and once it is free it is over, not late") {
  DueTask held = task_of("415", "milk held back", DueState::due);
  held.kind = TaskKind::withdrawal_end;
  DueTask is_over = task_of("416", "milk held back", DueState::overdue);
  is_over.kind = TaskKind::withdrawal_end;
  const std::string text =
      due_text(list_of({task_of("412", "wrap off", DueState::overdue), held, is_over}));
  CHECK(at(text, "Milk and meat held back\n") < at(text, "415"));
  CHECK(at(text, "415") < at(text, "Late\n"));
  CHECK(at(text, "412    wrap off (late since Mon 23 Nov)") > at(text, "Late\n"));
  CHECK(at(text, "416    milk held back (over since Mon 23 Nov)") > at(text, "Late\n"));
}

TEST_CASE("Whose herd it is is told only where the list holds more than one") {
  DueTask other = task_of("9", "wrap off", DueState::due);
  other.herd = HerdId{uuid_derived("another herd")};
  other.herd_name = "Hill Farm";
  const DueTask one = task_of("412", "wrap off", DueState::due);
  CHECK(due_text(list_of({one})).find('[') == std::string::npos);
  const std::string both = due_text(list_of({one, other}));
  at(both, "[Thornby Hollow]");
  at(both, "[Hill Farm]");
}

TEST_CASE("Who kicks is told first, also when nothing is open") {
  DueList list = list_of({});
  list.careful = {kicks("412")};
  const std::string text = due_text(list);
  CHECK(at(text, "Careful in the crush\n  412    kicks (Wed 28 Oct)") <
        at(text, "Nothing is open.\n"));
}

TEST_CASE("Where routine trims come from is told once below the list") {
  DueTask trim = task_of("412", "routine trim due: before drying off", DueState::due);
  trim.kind = TaskKind::routine_trim;
  trim.source = "a page of advice";
  const std::string text = due_text(list_of({trim, trim}));
  const std::string line = "  before drying off: a page of advice\n";
  CHECK(at(text, line) == text.rfind(line));
  CHECK(at(text, "When routine trims are due\n") < at(text, line));
}

}  // namespace evenclaw::cli
