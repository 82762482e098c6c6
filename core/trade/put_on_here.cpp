#include "core/trade/put_on_here.hpp"

#include <algorithm>
#include <vector>

#include "core/trade/follow_up_rules.hpp"
#include "core/trade/on_foot.hpp"

namespace evenclaw {

bool is_put_on_at(const OnFootRow& row, Fixture fixture, VisitId visit) {
  return row.fixture == fixture && row.visit == visit && !row.only_seen;
}

Rows without_put_on_at(Rows past, Fixture fixture, VisitId visit, const FootSet& feet) {
  const std::vector<OnFootRow> on_feet = past.on_feet;
  const auto is_new = [&](const OnFootRow& row) {
    return is_put_on_at(row, fixture, visit) && feet.has(row.foot);
  };
  const auto is_of_a_new_one = [&](const TaskRow& task) {
    if (task.visit != visit || !task.foot || !is_task_of(fixture, task.kind)) return false;
    return std::any_of(on_feet.begin(), on_feet.end(), [&](const OnFootRow& row) {
      return is_new(row) && row.foot == *task.foot && claws_agree(row.claw, task.claw);
    });
  };
  std::erase_if(past.tasks, is_of_a_new_one);
  std::erase_if(past.on_feet, is_new);
  return past;
}

}  // namespace evenclaw
