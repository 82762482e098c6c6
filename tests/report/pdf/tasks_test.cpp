#include <doctest/doctest.h>

#include <algorithm>

#include "report/pdf/block_strips.hpp"
#include "report/pdf/pages.hpp"
#include "tests/report/pdf/shipped_fonts.hpp"

namespace evenclaw {
namespace {

TaskList two_tasks() {
  return {"done on", {{"412", {}, {{plain("wrap off")}, {plain("block check")}}}}};
}

std::vector<Piece> laid(const TaskList& list) {
  Typesetter typesetter = test::typesetter();
  return dealt_to_pages(task_strips(list, {}, typesetter))[0].pieces;
}

}  // namespace

TEST_CASE("Every task has a box of 6 mm and a line to write on") {
  const std::vector<Piece> pieces = laid(two_tasks());
  const std::vector<Extent> boxes = test::boxes_on(pieces);
  REQUIRE(boxes.size() == 2);
  for (const Extent& box : boxes) {
    CHECK(box.right - box.left == doctest::Approx(6));
    CHECK(box.bottom - box.top == doctest::Approx(6));
  }
  CHECK(test::lines_on(pieces) ==
        std::vector<std::string>{"412", "wrap off", "done on", "block check", "done on"});
}

TEST_CASE("The cow and her first task stand on one baseline, the box beside the task") {
  const std::vector<Piece> pieces = laid(two_tasks());
  const PlacedLine cow = test::placed(pieces, "412");
  const PlacedLine task = test::placed(pieces, "wrap off");
  CHECK(cow.at.y == doctest::Approx(task.at.y));
  const Extent box = test::boxes_on(pieces)[0];
  CHECK(box.right < task.at.x);
  CHECK(box.top < task.at.y);
  CHECK(box.bottom > task.at.y);
}

TEST_CASE("Without words for it there is no line to write on, and more room for the task") {
  TaskList list = two_tasks();
  list.done_on.clear();
  list.items[0].lines = {{plain("block still on? right hind, inside claw, as she came lame")}};
  CHECK(test::placed(laid(list), "block still on? right hind, inside claw, as she came lame").at.x >
        0);
  list.done_on = "done on";
  CHECK(test::placed(laid(list), "block still on? right hind, inside claw, as she came lame").at.x <
        0);
}

TEST_CASE("What is said of a cow before her tasks has no box") {
  TaskList list = two_tasks();
  list.items[0].about = {plain("careful, she kicks")};
  CHECK(test::boxes_on(laid(list)).size() == 2);
  const std::vector<Piece> pieces = laid(list);
  CHECK(test::placed(pieces, "412").at.y ==
        doctest::Approx(test::placed(pieces, "careful, she kicks").at.y));
}

TEST_CASE("The longest tasks of the trade stand on one line beside the place to write") {
  for (const char* words :
       {"block check right front, outside claw", "block still on? right front, outside claw",
        "late: block off right front, both claws", "look at the sore on right front"}) {
    TaskList list = two_tasks();
    list.items[0].lines = {{plain(words)}};
    CHECK_MESSAGE(test::placed(laid(list), words).at.x > 0, words);
  }
}

TEST_CASE("No word of a cow without a number is broken") {
  TaskList list = two_tasks();
  list.items[0].label = "no number";
  const std::vector<std::string> lines = test::lines_on(laid(list));
  CHECK(std::count(lines.begin(), lines.end(), "no") == 1);
  CHECK(std::count(lines.begin(), lines.end(), "number") == 1);
}

TEST_CASE("All tasks of a cow are one piece") {
  Typesetter typesetter = test::typesetter();
  CHECK(test::is_one_piece(task_strips(two_tasks(), {}, typesetter)));
}

}  // namespace evenclaw
