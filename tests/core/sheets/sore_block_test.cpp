#include "core/sheets/sore_block.hpp"

#include <doctest/doctest.h>

#include "tests/core/sheets/invented_day.hpp"

namespace evenclaw {

namespace {

/// What is told of a task beside the block on the outside claw of left hind.
std::string told_beside(TaskKind kind, Foot foot, Claw claw, bool is_open = true) {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  TaskRow& sore = day.task_on(Foot::lh, Claw::outside, TaskKind::block_off, Owner::farmer, 0);
  sore.rule = "block-on-pain";
  sore.open = is_open;
  day.task_on(foot, claw, kind, Owner::trimmer, 28);
  std::vector<TaskRow> tasks = day.rows().tasks;
  tell_sore_blocks(tasks, english_wording());
  CHECK(tasks.front().words == day.rows().tasks.front().words);
  return tasks.back().words;
}

}  // namespace

TEST_CASE("a block on a sore claw is asked after and comes off only if the trimmer leaves it on") {
  const std::string left = ", if the trimmer leaves it on";
  for (const TaskKind kind : {TaskKind::block_check, TaskKind::block_off}) {
    const std::string plain = task_words(kind, Foot::lh, Claw::outside);
    CHECK(told_beside(kind, Foot::lh, Claw::outside) == plain + left);
    CHECK(told_beside(kind, Foot::lh, Claw::outside, false) == plain);
  }
}

TEST_CASE("other blocks and other orders stay beside a block on a sore claw") {
  CHECK(told_beside(TaskKind::block_off, Foot::lh, Claw::inside) ==
        task_words(TaskKind::block_off, Foot::lh, Claw::inside));
  CHECK(told_beside(TaskKind::block_off, Foot::rh, Claw::outside) ==
        task_words(TaskKind::block_off, Foot::rh, Claw::outside));
  CHECK(told_beside(TaskKind::look_at_foot, Foot::lh, Claw::none) ==
        task_words(TaskKind::look_at_foot, Foot::lh, Claw::none));
}

}  // namespace evenclaw
