#include "core/trade/put_on_here.hpp"

#include <algorithm>
#include <string_view>
#include <vector>

#include "core/trade/follow_up_rules.hpp"
#include "core/trade/on_foot.hpp"
#include "core/trade/spoken.hpp"

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

FootSet feet_carrying(Fixture fixture, const Rows& past) {
  FootSet feet;
  for (const TaskRow& task : open_tasks(past)) {
    if (task.foot && is_task_of(fixture, task.kind)) feet.add(*task.foot);
  }
  for (const Foot foot : all_feet) {
    if (!fixtures_left(past, foot, fixture).empty()) feet.add(foot);
  }
  return feet;
}

namespace {

constexpr std::string_view put_on_now = " put on at this visit. ";

}  // namespace

std::string asked_of_put_on_now(Fixture fixture, const FootSet& asked, bool are_named) {
  const bool is_one = asked.count() == 1;
  return "Her " + std::string(name_of(fixture)) + (is_one ? "" : "s") + " on " + spoken(asked) +
         (is_one ? " was" : " were") + std::string(put_on_now) +
         (is_one ? "Is that one off?" : "Are those off?") + " Then say " +
         (are_named ? "this again." : "the foot.");
}

bool asks_of_put_on_now(std::string_view question) {
  return question.find(put_on_now) != std::string_view::npos;
}

}  // namespace evenclaw
