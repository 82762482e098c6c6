#include "core/api/tasks.hpp"

#include <doctest/doctest.h>

#include "tests/core/api/workplace.hpp"

namespace evenclaw::test {

namespace {

/// 412 with a wrap and a block on since 20 October 2026.
struct OneCow {
  Workplace place;
  HerdId herd;

  OneCow() : herd(place.herd().herd) {
    (void)place.visited("2026-10-20", {"412 LH DD raw behind; wrap on", "RH outside sole ulcer",
                                       "block on inside", "done"});
  }

  std::vector<DueTask> open() {
    return open_tasks_of(place.store, herd, "412", day("2026-10-27")).value();
  }

  std::string slug_of_closing(TaskId task, std::string_view words) {
    const auto closed = close_task(place.ports(), herd, task, words);
    return closed ? "" : closed.faults().front().slug;
  }
};

}  // namespace

TEST_CASE("a task is closed in the words of who did it, and only that one") {
  OneCow cow;
  const std::vector<DueTask> before = cow.open();
  REQUIRE(before.size() == 5);
  CHECK(cow.slug_of_closing(before[0].task, "wrap off, looks dry").empty());
  const std::vector<DueTask> after = cow.open();
  REQUIRE(after.size() == 4);
  CHECK(after[0].task == before[1].task);
  CHECK(after[1].task == before[2].task);
}

TEST_CASE("a task is closed once, and never without words") {
  OneCow cow;
  const TaskId task = cow.open()[0].task;
  CHECK(cow.slug_of_closing(task, "  ") == "usage");
  CHECK(cow.slug_of_closing(task, "done").empty());
  CHECK(cow.slug_of_closing(task, "done") == "usage");
  CHECK(cow.slug_of_closing(TaskId{}, "done") == "usage");
}

TEST_CASE("a task that is moved is late as many days after its day as before") {
  OneCow cow;
  const DueTask before = cow.open()[0];
  REQUIRE(move_task(cow.place.ports(), cow.herd, before.task, day("2026-11-02"), "farmer away"));
  for (const DueTask& after : cow.open()) {
    if (after.task != before.task) continue;
    CHECK(after.due == day("2026-11-02"));
    CHECK(after.overdue - after.due == before.overdue - before.due);
    return;
  }
  FAIL("the task is not there any more");
}

TEST_CASE("a task is not moved to before the day it was made") {
  OneCow cow;
  const DueTask before = cow.open()[0];
  CHECK_FALSE(move_task(cow.place.ports(), cow.herd, before.task, day("2026-10-19"), ""));
  CHECK(cow.open()[0].due == before.due);
}

TEST_CASE("tasks of a cow nobody knows are no empty list") {
  OneCow cow;
  const auto tasks = open_tasks_of(cow.place.store, cow.herd, "999", day("2026-10-27"));
  REQUIRE_FALSE(tasks);
  CHECK(tasks.faults().front().slug == "cow-not-found");
}

}  // namespace evenclaw::test
