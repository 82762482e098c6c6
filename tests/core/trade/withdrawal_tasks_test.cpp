#include "core/trade/withdrawal_tasks.hpp"

#include <doctest/doctest.h>

#include "core/trade/medicine_use.hpp"
#include "tests/core/trade/told_lines.hpp"
#include "tests/core/trade/told_medicine.hpp"

using namespace evenclaw;
using namespace evenclaw::told;

namespace {

std::vector<TaskMade> tasks_of(std::string_view text) {
  return withdrawal_tasks(
      with_medicines(told_day(text).draft.turn, invented_list(), first_of_november),
      first_of_november);
}

Names words_of(const std::vector<TaskMade>& tasks) {
  Names words;
  for (const TaskMade& task : tasks) words.push_back(task.words);
  return words;
}

}  // namespace

TEST_CASE("a product with a withdrawal makes the farmer hold back milk and meat until its end") {
  const std::vector<TaskMade> tasks = tasks_of("412\nLH DD raw; spray with slowmix");
  REQUIRE(tasks.size() == 2);
  CHECK(tasks[0].kind == TaskKind::withdrawal_end);
  CHECK(tasks[0].owner == Owner::farmer);
  CHECK(tasks[0].earliest == first_of_november);
  CHECK(tasks[0].due == first_of_november + 2);
  CHECK(tasks[0].overdue == first_of_november + 3);
  CHECK(words_of(tasks) ==
        Names{"last milk held back: Tue 3 Nov evening", "last day meat held back: Fri 6 Nov"});
}

TEST_CASE("a product without withdrawal holds nothing back, nor does one that is not on the list") {
  CHECK(tasks_of("412\nLH DD raw; spray with plainmix").empty());
  CHECK(tasks_of("412\nLH DD raw; spray with greenmix").empty());
}

TEST_CASE("how she is marked is told with the end, in the room a task has") {
  const Names words = words_of(tasks_of("412 marked with paint\nLH DD raw; spray with slowmix"));
  CHECK(words[0] == "last milk held back: Tue 3 Nov evening; marked with paint");
  CHECK(words[0].size() <= 60);
  CHECK(words_of(tasks_of("412 marked\nLH spray with slowmix"))[1] ==
        "last day meat held back: Fri 6 Nov; marked");
}

TEST_CASE("an end told by mouth is kept as told, the whole day when no milking is named") {
  CHECK(words_of(tasks_of("412 milk withheld till 2026-11-09 morning")) ==
        Names{"last milk held back: Mon 9 Nov morning"});
  CHECK(words_of(tasks_of("412 withdrawal 4d")) ==
        Names{"last milk held back: Thu 5 Nov evening", "last day meat held back: Thu 5 Nov"});
  CHECK(words_of(tasks_of("412 meat withheld till Thu")) ==
        Names{"last day meat held back: Thu 5 Nov"});
}

TEST_CASE("the latest of several ends holds, and none told by mouth shortens that of the list") {
  CHECK(words_of(tasks_of("412 milk withheld tomorrow\nLH DD raw; spray with slowmix")) ==
        Names{"last milk held back: Tue 3 Nov evening", "last day meat held back: Fri 6 Nov"});
  CHECK(words_of(tasks_of("412 milk withheld 9d\nLH DD raw; spray with slowmix"))[0] ==
        "last milk held back: Tue 10 Nov evening");
}

TEST_CASE("somebody who says that there is no withdrawal makes no task") {
  CHECK(tasks_of("412 no withdrawal\nLH DD raw; spray with greenmix").empty());
}
