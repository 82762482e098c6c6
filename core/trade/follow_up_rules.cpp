#include "core/trade/follow_up_rules.hpp"

#include <algorithm>
#include <array>
#include <string>
#include <tuple>

#include "core/trade/identity.hpp"

namespace evenclaw {

const FollowUpRule wrap_off_rule = {
    "wrap-off",
    1,
    TaskKind::wrap_off,
    Owner::farmer,
    3,
    5,
    8,
    "derived from the trials: 5 days with salicylic paste (Fiedler 2015), dressings changed at 7 "
    "days; no official number of days exists"};
const FollowUpRule block_check_rule = {
    "block-check",
    1,
    TaskKind::block_check,
    Owner::trimmer,
    21,
    28,
    35,
    "recheck at about 4 weeks: AHDB, and Cramer 2015 (University of Minnesota); a week either "
    "side is our judgement"};
const FollowUpRule block_off_rule = {
    "block-off",
    1,
    TaskKind::block_off,
    Owner::trimmer,
    28,
    35,
    42,
    "common practice, no source: no published longest time; six weeks is late, due a week before"};
const FollowUpRule see_again_rule = {
    "see-again",
    1,
    TaskKind::look_at_foot,
    Owner::trimmer,
    21,
    28,
    35,
    "when no time was said: the only published recheck for trimmers, about 4 weeks (AHDB, Cramer "
    "2015)"};
const FollowUpRule watch_her_walk_rule = {
    "watch-her-walk",
    1,
    TaskKind::watch_her_walk,
    Owner::farmer,
    0,
    0,
    1,
    "common practice, no source: made only by being called; the caller says by when, no number of "
    "days is published"};
const FollowUpRule vet_rule = {"vet",
                               1,
                               TaskKind::vet,
                               Owner::vet,
                               0,
                               0,
                               1,
                               "common practice, no source: the farmer rings the same day"};
const FollowUpRule still_lame_rule = {
    "still-lame",
    1,
    TaskKind::look_at_foot,
    Owner::trimmer,
    0,
    0,
    1,
    "waiting ruins the outcome of a lame cow: Thomas 2016, Vet Rec 178:116"};

const FollowUpRule milk_withdrawal_rule = {
    "milk-withdrawal",
    1,
    TaskKind::withdrawal_end,
    Owner::farmer,
    0,
    0,
    1,
    "the end as the vet or the label states it; the farmer keeps milk and meat back: common "
    "practice, no source"};
const FollowUpRule meat_withdrawal_rule = {
    "meat-withdrawal",
    1,
    TaskKind::withdrawal_end,
    Owner::farmer,
    0,
    0,
    1,
    "the end as the vet or the label states it; the farmer keeps milk and meat back: common "
    "practice, no source"};

namespace {

bool is_block_task(TaskKind kind) {
  return kind == TaskKind::block_check || kind == TaskKind::block_off;
}

}  // namespace

std::span<const FollowUpRule> all_follow_up_rules() {
  static const std::array rules = {wrap_off_rule,   block_check_rule,     block_off_rule,
                                   see_again_rule,  watch_her_walk_rule,  vet_rule,
                                   still_lame_rule, milk_withdrawal_rule, meat_withdrawal_rule};
  return rules;
}

TaskMade task_from(const FollowUpRule& rule, const Aim& aim, Day visit_day) {
  TaskMade task;
  task.kind = rule.kind;
  task.foot = aim.foot;
  task.claw = aim.claw;
  task.owner = rule.owner;
  task.earliest = visit_day + rule.earliest_days;
  task.due = visit_day + rule.due_days;
  task.overdue = visit_day + rule.overdue_days;
  if (aim.said) {
    task.due = std::max(*aim.said, visit_day);
    task.earliest = std::max(visit_day, task.due - (rule.due_days - rule.earliest_days));
    task.overdue = task.due + 1;
  }
  task.words = task_words(rule.kind, aim.foot, aim.claw);
  task.rule = rule.slug;
  task.rule_version = rule.version;
  return task;
}

void name_tasks(std::vector<TaskMade>& tasks, EntryId first) {
  for (TaskMade& task : tasks) {
    const std::string foot(task.foot ? word_of(*task.foot) : "no foot");
    task.task = task_id(first, task.rule + ' ' + std::string(word_of(task.kind)) + ' ' + foot +
                                   ' ' + std::string(word_of(task.claw)));
  }
}

void close_task(std::vector<TaskClosed>& closed, const TaskRow& task, std::string_view how) {
  const bool already = std::any_of(closed.begin(), closed.end(), [&](const TaskClosed& other) {
    return other.task == task.task;
  });
  if (!already) closed.push_back({task.task, std::string(how)});
}

bool is_task_of(Fixture fixture, TaskKind kind) {
  return fixture == Fixture::wrap ? kind == TaskKind::wrap_off : is_block_task(kind);
}

std::vector<TaskRow> open_tasks(const Rows& past) {
  std::vector<TaskRow> open;
  for (const TaskRow& task : past.tasks) {
    if (task.open) open.push_back(task);
  }
  std::sort(open.begin(), open.end(), [](const TaskRow& a, const TaskRow& b) {
    return std::tie(a.due, a.kind, a.foot, a.claw, a.task) <
           std::tie(b.due, b.kind, b.foot, b.claw, b.task);
  });
  return open;
}

std::vector<Claw> claws_of_block_tasks(const std::vector<TaskRow>& open, Foot foot) {
  std::vector<Claw> claws;
  for (const TaskRow& task : open) {
    if (!is_block_task(task.kind) || task.foot != foot) continue;
    if (std::find(claws.begin(), claws.end(), task.claw) == claws.end()) {
      claws.push_back(task.claw);
    }
  }
  return claws;
}

}  // namespace evenclaw
