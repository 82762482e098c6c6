#include "core/api/tasks_as_told.hpp"

#include <doctest/doctest.h>

#include <string>

#include "tests/core/api/workplace.hpp"

namespace evenclaw::test {

namespace {

TaskRow task_of(TaskKind kind, Owner owner, std::string words) {
  TaskRow task;
  task.kind = kind;
  task.owner = owner;
  task.foot = Foot::lh;
  task.words = std::move(words);
  return task;
}

/// The farm's look at a foot to which the vet is asked for, or was until he came.
std::string look_told(bool vet_is_waited_for) {
  Workplace place;
  std::vector<TaskRow> tasks = {
      task_of(TaskKind::look_at_foot, Owner::farmer, "look at left hind, ring if no better"),
      task_of(TaskKind::vet, Owner::vet, "vet to see left hind, farmer rings")};
  tasks.back().open = vet_is_waited_for;
  REQUIRE(tell_open_tasks(place.store, std::nullopt, day("2026-10-28"), tasks).ok());
  CHECK(tasks.back().words == "vet to see left hind, farmer rings");
  return tasks.front().words;
}

}  // namespace

TEST_CASE("while the vet is asked for to a foot the farm's look at it says that he is first") {
  CHECK(look_told(true) == "look at left hind again (the vet is asked for first)");
  CHECK(look_told(false) == "look at left hind, ring if no better");
}

}  // namespace evenclaw::test
