#include <doctest/doctest.h>

#include <set>
#include <string>

#include "core/log/selection.hpp"

namespace evenclaw {

TEST_CASE("every named count can be answered and is found by its name") {
  std::set<std::string> names;
  for (const CountQuery& count : named_counts()) {
    CAPTURE(count.name);
    CHECK(names.insert(count.name).second);
    CHECK(check_count(count));
    CHECK(find_count(count.name) == &count);
  }
  CHECK(names.size() >= 10);
  CHECK(find_count("cows_by_colour") == nullptr);
}

TEST_CASE("open tasks and what is still on are counted without what was closed or came off") {
  const CountQuery& tasks = *find_count("open_tasks_by_kind_and_owner");
  REQUIRE(tasks.where.size() == 1);
  CHECK(tasks.where.front().column == "open");
  CHECK(tasks.where.front().cell == Cell(std::int64_t{1}));
  const CountQuery& on = *find_count("on_feet_by_fixture");
  REQUIRE(on.where.size() == 1);
  CHECK(on.where.front().cell == Cell(std::string("still_on")));
}

}  // namespace evenclaw
