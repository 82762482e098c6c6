#include "core/trade/on_after_all.hpp"

#include <algorithm>
#include <iterator>
#include <optional>
#include <vector>

#include "core/trade/block_lost_early.hpp"
#include "core/trade/follow_up_rules.hpp"
#include "core/trade/on_foot.hpp"

namespace evenclaw {

namespace {

bool went_off(const OnFootRow& row, Day from) {
  const bool is_off = row.ended == FixtureEnd::taken_off || row.ended == FixtureEnd::came_off;
  return is_off && row.ended_on && *row.ended_on >= from;
}

TaskMade once_more(const TaskRow& task, Day today) {
  TaskMade made;
  made.kind = task.kind;
  made.foot = task.foot;
  made.claw = task.claw;
  made.owner = task.owner;
  made.due = std::max(task.due, today);
  made.earliest = std::min(std::max(task.earliest, today), made.due);
  made.overdue = made.due + (task.overdue - task.due);
  made.words = task.words;
  made.rule = task.rule;
  made.rule_version = task.rule_version;
  return made;
}

/// The one that a task closed twice made last counts.
bool is_among(const std::vector<TaskMade>& tasks, const TaskRow& task) {
  return std::any_of(tasks.begin(), tasks.end(), [&](const TaskMade& made) {
    return made.rule == task.rule && made.foot == task.foot && made.claw == task.claw;
  });
}

}  // namespace

FootSet said_to_be_off(const NewsSaid& news, const Rows& past, Day from) {
  FootSet feet;
  const std::optional<FixtureSaid> said = fixture_said(news.news);
  if (!said) return feet;
  for (const OnFootRow& row : past.on_feet) {
    const bool is_meant = news.feet.empty() || news.feet.has(row.foot);
    if (!is_meant || row.fixture != said->fixture || !went_off(row, from)) continue;
    if (fixtures_left(past, row.foot, row.fixture).empty()) feet.add(row.foot);
  }
  return feet;
}

NewsEffect on_after_all(const NewsSaid& news, const FootSet& feet, const Rows& past, Day from,
                        const ToldOn& told) {
  NewsEffect effect;
  const std::optional<FixtureSaid> said = fixture_said(news.news);
  if (!said) return effect;
  std::vector<TaskRow> closed;
  std::copy_if(past.tasks.begin(), past.tasks.end(), std::back_inserter(closed),
               [&](const TaskRow& task) {
                 return !task.open && task.closed_on && *task.closed_on >= from && task.foot &&
                        feet.has(*task.foot) && is_task_of(said->fixture, task.kind);
               });
  std::stable_sort(closed.begin(), closed.end(),
                   [](const TaskRow& a, const TaskRow& b) { return b.made_on < a.made_on; });
  FootSet covered;
  for (const TaskRow& task : closed) {
    covered.add(*task.foot);
    if (!is_among(effect.makes, task)) effect.makes.push_back(once_more(task, told.day));
  }
  const FollowUpRule& rule = said->fixture == Fixture::wrap ? wrap_off_rule : block_off_rule;
  for (const Foot foot : all_feet) {
    if (!feet.has(foot) || covered.has(foot)) continue;
    effect.makes.push_back(task_from(rule, {foot, Claw::none, told.day}, told.day));
  }
  name_tasks(effect.makes, told.entry);
  if (said->fixture == Fixture::block) close_lost_blocks(effect.closes, past, feet);
  return effect;
}

}  // namespace evenclaw
