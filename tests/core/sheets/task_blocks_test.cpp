#include "core/sheets/task_blocks.hpp"

#include <doctest/doctest.h>

#include "core/paper/text.hpp"
#include "core/sheets/visit_view.hpp"
#include "tests/core/sheets/invented_day.hpp"

namespace evenclaw {

namespace {

std::string text_of(InventedDay& day) {
  const VisitView view = view_of(day.input(), english_wording());
  Document document;
  document.blocks = task_blocks(view.tasks, view.names, 3, day.input().printed, view.wording);
  const std::string text = to_plain_text(document);
  return text.substr(text.find_first_not_of('\n'));
}

}  // namespace

TEST_CASE("tasks stand by date, within a date by number") {
  InventedDay day("Hollow Meadow");
  day.task("513", TaskKind::wrap_off, Owner::farmer, 2);
  day.task("77", TaskKind::wrap_off, Owner::farmer, 2);
  day.task("412", TaskKind::wrap_off, Owner::farmer, 1);
  CHECK(text_of(day) ==
        "By Wed 25 Nov (for the farm)\n"
        "412  [ ] wrap off\n"
        "\n"
        "By Thu 26 Nov (for the farm)\n"
        "77   [ ] wrap off\n"
        "513  [ ] wrap off\n");
}

TEST_CASE("a cow stands once per date, the other owner is named on the line") {
  InventedDay day("Hollow Meadow");
  day.task("412", TaskKind::look_at_foot, Owner::trimmer, 5);
  day.task("412", TaskKind::wrap_off, Owner::farmer, 5);
  day.task("77", TaskKind::look_at_foot, Owner::trimmer, 5);
  CHECK(text_of(day) ==
        "By Sun 29 Nov (for the farm)\n"
        "412  [ ] wrap off\n"
        "     [ ] for the trimmer: see her again\n"
        "\n"
        "By Sun 29 Nov (for the trimmer)\n"
        "77  [ ] see her again\n");
}

TEST_CASE("what is past its last good day is called late, what is due today today") {
  InventedDay day("Hollow Meadow");
  day.task("412", TaskKind::wrap_off, Owner::farmer, -6);
  day.task("77", TaskKind::wrap_off, Owner::farmer, 0);
  CHECK(text_of(day) ==
        "Late, was due by Wed 18 Nov (for the farm)\n"
        "412  [ ] wrap off\n"
        "\n"
        "By Tue 24 Nov (today, for the farm)\n"
        "77  [ ] wrap off\n");
}

TEST_CASE("the farm is told from when on a wrap may come off") {
  InventedDay day("Hollow Meadow");
  TaskRow& wrap = day.task("412", TaskKind::wrap_off, Owner::farmer, 5);
  wrap.earliest = wrap.due - 2;
  CHECK(text_of(day) ==
        "By Sun 29 Nov, not before Fri 27 Nov (for the farm)\n"
        "412  [ ] wrap off\n");
}

TEST_CASE("where the farm may begin on different days, each line says when") {
  InventedDay day("Hollow Meadow");
  for (const int earlier : {2, 3}) {
    TaskRow& wrap = day.task(std::to_string(earlier), TaskKind::wrap_off, Owner::farmer, 5);
    wrap.earliest = wrap.due - earlier;
  }
  CHECK(text_of(day) ==
        "By Sun 29 Nov (for the farm)\n"
        "2  [ ] wrap off not before Fri 27 Nov\n"
        "3  [ ] wrap off not before Thu 26 Nov\n");
}

TEST_CASE("a cow without a number is told by what she looks like") {
  InventedDay day("Hollow Meadow");
  day.task("x", TaskKind::look_at_foot, Owner::trimmer, 28);
  day.known("x").number = day.known("x").number_said = "";
  day.known("x").looks = "brown heifer";
  CHECK(text_of(day).find("?  no number (brown heifer)\n   [ ] see her again\n") !=
        std::string::npos);
}

TEST_CASE("tasks and cows are counted apart") {
  InventedDay day("Hollow Meadow");
  day.task("412", TaskKind::wrap_off, Owner::farmer, 2);
  const auto words = [&] {
    const VisitView view = view_of(day.input(), english_wording());
    return task_count_words(view.tasks, view.wording);
  };
  CHECK(words() == "1 task on 1 cow");
  day.task("412", TaskKind::look_at_foot, Owner::trimmer, 2);
  CHECK(words() == "2 tasks on 1 cow");
}

TEST_CASE("a day that is past is called late also while its last good day is still to come") {
  InventedDay day("Hollow Meadow");
  TaskRow& task = day.task("412", TaskKind::wrap_off, Owner::farmer, -1);
  task.overdue = task.due + 3;
  CHECK(text_of(day) ==
        "Late, was due by Mon 23 Nov (for the farm)\n"
        "412  [ ] wrap off\n");
}

}  // namespace evenclaw
