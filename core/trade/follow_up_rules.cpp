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
const FollowUpRule block_first_look_rule = {
    "block-first-look",
    1,
    TaskKind::block_check,
    Owner::farmer,
    5,
    8,
    12,
    "the trial with blocks looked again after 5 to 11 days and refitted lost ones: Thomas 2015; "
    "that the farmer does it is common practice, no source",
    "block still on? {where}"};
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
// On the claw that hurts a block does harm with every step: nobody waits for its first look.
const FollowUpRule block_on_pain_rule = {
    "block-on-pain",
    1,
    TaskKind::block_off,
    Owner::farmer,
    0,
    0,
    1,
    "block on the sound claw only: Cattle Lameness claw trimming group, Cramer 2015 (University of "
    "Minnesota); that the farmer rings the same day is common practice, no source",
    "ring trimmer: block on sore claw, {where}"};
// Without it she stands on the claw that hurts again.
const FollowUpRule block_lost_early_rule = {
    "block-lost-early",
    1,
    TaskKind::look_at_foot,
    Owner::farmer,
    0,
    0,
    1,
    "the trial refitted lost blocks: Thomas 2015; that the farmer rings the same day is our "
    "judgement",
    "ring trimmer: block lost early, {where}"};
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
    2,
    TaskKind::watch_her_walk,
    Owner::farmer,
    walks_worse_after_trim_days,
    14,
    22,
    "lame cows 14 % before, 34 % right after trimming: Van Hertem 2014; half of treated lame cows "
    "sound after 18 days, three quarters after 21: a thesis of Massey; a week apart is our "
    "judgement"};
const FollowUpRule lame_walk_rule = {
    "lame-walk",
    1,
    TaskKind::watch_her_walk,
    Owner::farmer,
    walks_worse_after_trim_days,
    14,
    22,
    "as watch-her-walk; still lame then, waiting ruins the outcome: Thomas 2016, Vet Rec 178:116",
    "watch her walk, ring if still lame"};
const FollowUpRule dd_look_rule = {
    "dd-look",
    2,
    TaskKind::look_at_foot,
    Owner::farmer,
    7,
    10,
    15,
    "trials looked at day 7, 10, 14, 21 and 28 (Fiedler 2015: 10; Kofler 2015: 14.5 % came back); "
    "which of them is our judgement",
    "look at the sore on {where}"};
const FollowUpRule foul_look_rule = {
    "foul-look",
    1,
    TaskKind::look_at_foot,
    Owner::farmer,
    2,
    3,
    6,
    "common practice, no source: foul that is treated gets better in days",
    "look at {where}, vet if no better"};
const FollowUpRule horn_first_look_rule = {
    "horn-first-look",
    1,
    TaskKind::look_at_foot,
    Owner::farmer,
    5,
    8,
    12,
    "the trial looked again after 5 to 11 days: Thomas 2015; no better after 5 to 7 days means a "
    "second look: dairy-cattle.blogspot.com 2006",
    "look at {where}, ring if no better"};
const FollowUpRule horn_look_rule = {
    "horn-look",
    1,
    TaskKind::look_at_foot,
    Owner::trimmer,
    25,
    28,
    32,
    "the trial looked after 25 to 31 days: Thomas 2015; infected ones 64 % horned over by 28 days: "
    "Kofler 2015"};
const FollowUpRule vet_rule = {
    "vet",
    2,
    TaskKind::vet,
    Owner::vet,
    0,
    0,
    1,
    "common practice, no source: the farmer rings the same day; that it is told why a second "
    "failure is the vet's: Thomas 2016, Vet Rec 178:116"};
const FollowUpRule pain_relief_rule = {
    "pain-relief",
    1,
    TaskKind::vet,
    Owner::vet,
    0,
    0,
    1,
    "trim, block and pain relief together did best: Thomas 2015; prescribing it is the vet's",
    "pain relief for {where}, farmer asks vet"};
const FollowUpRule still_lame_rule = {
    "still-lame",
    1,
    TaskKind::look_at_foot,
    Owner::trimmer,
    0,
    0,
    1,
    "waiting ruins the outcome of a lame cow: Thomas 2016, Vet Rec 178:116"};

// A wrap cuts in and a block tips the claw the longer they are on, and nobody knows how long.
const FollowUpRule wrap_since_when_rule = {
    "wrap-since-when",
    1,
    TaskKind::wrap_off,
    Owner::farmer,
    0,
    0,
    1,
    "nobody knows since when it is on, so it is asked at once: our judgement",
    "ask since when a wrap is on {where}"};
const FollowUpRule block_since_when_rule = {
    "block-since-when",
    1,
    TaskKind::block_off,
    Owner::trimmer,
    0,
    0,
    1,
    "nobody knows since when it is on, so it is asked at once: our judgement",
    "ask since when a block is on {where}"};
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
  static const std::array rules = {wrap_off_rule,        block_first_look_rule,
                                   block_check_rule,     block_off_rule,
                                   block_on_pain_rule,   block_lost_early_rule,
                                   see_again_rule,       dd_look_rule,
                                   horn_first_look_rule, horn_look_rule,
                                   foul_look_rule,       watch_her_walk_rule,
                                   lame_walk_rule,       vet_rule,
                                   pain_relief_rule,     still_lame_rule,
                                   wrap_since_when_rule, block_since_when_rule,
                                   milk_withdrawal_rule, meat_withdrawal_rule};
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
  if (rule.kind == TaskKind::watch_her_walk) {
    const Day walks_as_she_does = visit_day + walks_worse_after_trim_days;
    task.earliest = std::min(task.due, std::max(task.earliest, walks_as_she_does));
  }
  task.words = rule.words.empty() ? task_words(rule.kind, aim.foot, aim.claw)
                                  : task_words(rule.words, aim.foot, aim.claw);
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

bool is_somewhere_on_her(Fixture fixture, const TaskRow& task) {
  return !task.foot && is_task_of(fixture, task.kind);
}

bool is_one_somewhere(Fixture fixture, const Rows& past) {
  return std::any_of(past.tasks.begin(), past.tasks.end(), [fixture](const TaskRow& task) {
    return task.open && is_somewhere_on_her(fixture, task);
  });
}

TaskMade since_when(Fixture fixture, const Aim& aim, Day day) {
  return task_from(fixture == Fixture::wrap ? wrap_since_when_rule : block_since_when_rule, aim,
                   day);
}

bool asks_since_when(const TaskRow& task) {
  return task.rule == wrap_since_when_rule.slug || task.rule == block_since_when_rule.slug;
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
