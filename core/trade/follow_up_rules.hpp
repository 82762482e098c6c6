// The follow-up rules by name, how one becomes a task, and the open tasks it may meet.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "core/trade/follow_up.hpp"

namespace evenclaw {

extern const FollowUpRule wrap_off_rule;
extern const FollowUpRule block_first_look_rule;  // the farmer's: is it on
extern const FollowUpRule block_check_rule;
extern const FollowUpRule block_off_rule;
extern const FollowUpRule block_on_pain_rule;     // it stands on a claw that hurts
extern const FollowUpRule block_lost_early_rule;  // came off, and the claw beside it hurts
extern const FollowUpRule see_again_rule;
extern const FollowUpRule watch_her_walk_rule;  // made only by being called
extern const FollowUpRule lame_walk_rule;       // came lame, and nothing else asks for her
extern const FollowUpRule dd_look_rule;
extern const FollowUpRule foul_look_rule;
extern const FollowUpRule horn_first_look_rule;
extern const FollowUpRule horn_look_rule;
extern const FollowUpRule vet_rule;
extern const FollowUpRule pain_relief_rule;
extern const FollowUpRule still_lame_rule;
extern const FollowUpRule wrap_since_when_rule;  // told to be on, and nobody knew of it
extern const FollowUpRule block_since_when_rule;
extern const FollowUpRule milk_withdrawal_rule;  // made only with an end that was stated
extern const FollowUpRule meat_withdrawal_rule;

/// What a task is about, and the day said for it.
struct Aim {
  std::optional<Foot> foot;
  Claw claw = Claw::none;
  std::optional<Day> said;
};

/// Nobody judges by rule how she walks in the days after she was trimmed: cows walk worse then.
inline constexpr int walks_worse_after_trim_days = 7;

/// The task, still without its id. A day said comes first: due on it, late from the day after, to
/// be done earlier by as many days as the rule itself allows, never before the visit. Her walk is
/// not watched in the days after the trim unless the day said lies in them.
TaskMade task_from(const FollowUpRule& rule, const Aim& aim, Day visit_day);

/// As which news that she is still lame closes a look.
inline constexpr std::string_view told_still_lame = "still lame";

/// Gives every task the id that task_id() derives from what it is.
void name_tasks(std::vector<TaskMade>& tasks, EntryId first);

/// What is due first stands first.
std::vector<TaskRow> open_tasks(const Rows& past);

/// Wrap off for wraps; block check and block off for blocks.
bool is_task_of(Fixture fixture, TaskKind kind);

/// One told to be on, and nobody said on which foot: that is open until it is told where it is, or
/// that it is off.
bool is_somewhere_on_her(Fixture fixture, const TaskRow& task);
bool is_one_somewhere(Fixture fixture, const Rows& past);

/// What is asked of one that nobody knew of; it is that fixture's, and stays open until it is off.
TaskMade since_when(Fixture fixture, const Aim& aim, Day day);
bool asks_since_when(const TaskRow& task);

/// The claws for which the foot has open block tasks, each once.
std::vector<Claw> claws_of_block_tasks(const std::vector<TaskRow>& open, Foot foot);

/// Closes it unless it is closed already: the first words count.
void close_task(std::vector<TaskClosed>& closed, const TaskRow& task, std::string_view how);

}  // namespace evenclaw
