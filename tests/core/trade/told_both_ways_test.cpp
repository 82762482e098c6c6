#include "core/trade/told_both_ways.hpp"

#include <doctest/doctest.h>

namespace evenclaw {

TEST_CASE("a task of a wrap that was told both ways says so, until somebody says which holds") {
  TaskRow task;
  task.words = "wrap off left hind";
  CHECK_FALSE(is_told_both_ways(task));
  CHECK(words_without_doubt(task.words) == "wrap off left hind");
  task.words = told_both_ways(task.words);
  CHECK(task.words == "wrap off left hind (told off and told still on: which holds?)");
  CHECK(is_told_both_ways(task));
  CHECK(words_without_doubt(task.words) == "wrap off left hind");
}

}  // namespace evenclaw
