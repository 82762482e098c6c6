#include <doctest/doctest.h>

#include <algorithm>
#include <set>
#include <string>
#include <string_view>

#include "core/log/selection.hpp"

namespace evenclaw {

namespace {

const CountQuery& count_named(std::string_view name) {
  const auto counts = named_counts();
  const auto found = std::find_if(counts.begin(), counts.end(),
                                  [&](const CountQuery& count) { return count.name == name; });
  REQUIRE(found != counts.end());
  return *found;
}

}  // namespace

TEST_CASE("every named count can be answered and has a name of its own") {
  std::set<std::string> names;
  for (const CountQuery& count : named_counts()) {
    CAPTURE(count.name);
    CHECK(names.insert(count.name).second);
    CHECK(check_count(count));
  }
  CHECK(names.size() >= 10);
}

TEST_CASE("open tasks and what is still on are counted without what was closed or came off") {
  const CountQuery& tasks = count_named("open_tasks_by_kind_and_owner");
  REQUIRE(tasks.where.size() == 1);
  CHECK(tasks.where.front().column == "open");
  CHECK(tasks.where.front().cell == Cell(std::int64_t{1}));
  const CountQuery& on = count_named("on_feet_by_fixture");
  REQUIRE(on.where.size() == 1);
  CHECK(on.where.front().cell == Cell(std::string("still_on")));
}

}  // namespace evenclaw
