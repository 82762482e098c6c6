#include "core/trade/follow_up_rules.hpp"

#include <doctest/doctest.h>

#include <set>

#include "tests/core/trade/told_turns.hpp"

using namespace evenclaw;
using namespace evenclaw::told;

namespace {

TaskRow block_task(Claw claw, Foot foot = Foot::lh) {
  TaskRow task;
  task.task = {uuid_derived(std::to_string(static_cast<int>(claw)))};
  task.kind = TaskKind::block_off;
  task.foot = foot;
  task.claw = claw;
  return task;
}

}  // namespace

TEST_CASE("each rule has a name of its own, a source, and days in order") {
  std::set<std::string_view> slugs;
  for (const FollowUpRule& rule : all_follow_up_rules()) {
    CAPTURE(rule.slug);
    slugs.insert(rule.slug);
    CHECK(rule.version >= 1);
    CHECK_FALSE(rule.source.empty());
    CHECK(rule.earliest_days >= 0);
    CHECK(rule.earliest_days <= rule.due_days);
    CHECK(rule.due_days < rule.overdue_days);
  }
  CHECK(slugs.size() == all_follow_up_rules().size());
}

TEST_CASE("a task carries rule, version, owner and words") {
  const TaskMade task =
      task_from(block_check_rule, {Foot::lh, Claw::inside, {}}, first_of_november);
  CHECK(task.rule == "block-check");
  CHECK(task.rule_version == block_check_rule.version);
  CHECK(task.owner == Owner::trimmer);
  CHECK(task.words == "block check left hind, inside claw");
}

TEST_CASE("the words of every rule fit into 60 characters on any foot and claw") {
  for (const FollowUpRule& rule : all_follow_up_rules()) {
    CAPTURE(rule.slug);
    for (const Claw claw : {Claw::outside, Claw::inside, Claw::both, Claw::none}) {
      const TaskMade task = task_from(rule, {Foot::rf, claw, {}}, first_of_november);
      CHECK(task.words.size() <= 60);
      CHECK(task.words.find('{') == std::string::npos);
    }
  }
}

TEST_CASE("a day said before the visit counts as the day of the visit") {
  const TaskMade task =
      task_from(wrap_off_rule, {Foot::lh, Claw::none, first_of_november - 3}, first_of_november);
  CHECK(task.earliest == first_of_november);
  CHECK(task.due == first_of_november);
  CHECK(task.overdue == first_of_november + 1);
}

TEST_CASE("wraps have one kind of task, blocks two") {
  CHECK(is_task_of(Fixture::wrap, TaskKind::wrap_off));
  CHECK(is_task_of(Fixture::block, TaskKind::block_check));
  CHECK(is_task_of(Fixture::block, TaskKind::block_off));
  CHECK_FALSE(is_task_of(Fixture::wrap, TaskKind::block_off));
  CHECK_FALSE(is_task_of(Fixture::block, TaskKind::wrap_off));
  CHECK_FALSE(is_task_of(Fixture::block, TaskKind::vet));
}

TEST_CASE("the claws with block tasks are told once each, of that foot only") {
  const std::vector<TaskRow> open = {block_task(Claw::inside), block_task(Claw::inside),
                                     block_task(Claw::outside, Foot::rh)};
  CHECK(claws_of_block_tasks(open, Foot::lh) == std::vector<Claw>{Claw::inside});
  CHECK(claws_of_block_tasks(open, Foot::rf).empty());
}

TEST_CASE("closed tasks are not open, and the first words that close a task count") {
  Rows rows;
  rows.tasks = {block_task(Claw::inside), block_task(Claw::outside)};
  rows.tasks[1].open = false;
  REQUIRE(open_tasks(rows).size() == 1);
  std::vector<TaskClosed> closed;
  close_task(closed, rows.tasks[0], "block taken off");
  close_task(closed, rows.tasks[0], "gone");
  REQUIRE(closed.size() == 1);
  CHECK(closed[0].how == "block taken off");
}
