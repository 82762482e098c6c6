#include "core/trade/task.hpp"

#include <doctest/doctest.h>

using namespace evenclaw;

TEST_CASE("a task is told in plain words") {
  CHECK(task_words(TaskKind::wrap_off, Foot::lh, Claw::none) == "wrap off left hind");
  CHECK(task_words(TaskKind::block_check, Foot::lh, Claw::inside) ==
        "block check left hind, inside claw");
  CHECK(task_words(TaskKind::block_off, Foot::rh, Claw::not_called) == "block off right hind");
  CHECK(task_words(TaskKind::look_at_foot, Foot::rf, Claw::none) == "see again right front");
  CHECK(task_words(TaskKind::look_at_foot, std::nullopt, Claw::none) == "see her again");
  CHECK(task_words(TaskKind::watch_her_walk, std::nullopt, Claw::none) == "watch her walk");
  CHECK(task_words(TaskKind::vet, Foot::lh, Claw::none) == "vet to see left hind, farmer rings");
  CHECK(task_words(TaskKind::vet, std::nullopt, Claw::none) == "vet to see her, farmer rings");
}

TEST_CASE("words of its own name where it is to be done") {
  CHECK(task_words("look at {where}, please", Foot::lh, Claw::none) == "look at left hind, please");
  CHECK(task_words("on? {where}", Foot::rf, Claw::outside) == "on? right front, outside claw");
  CHECK(task_words("look at {where}", std::nullopt, Claw::none) == "look at her");
  CHECK(task_words("ring", Foot::lh, Claw::none) == "ring");
}

TEST_CASE("the words of a task fit into 60 characters") {
  for (const auto& kind : EnumWords<TaskKind>::table) {
    for (const auto& claw : EnumWords<Claw>::table) {
      CHECK(task_words(kind.value, std::nullopt, claw.value).size() <= 60);
      for (const Foot foot : all_feet) {
        CHECK(task_words(kind.value, foot, claw.value).size() <= 60);
      }
    }
  }
}
