// Which tasks a turn makes, which open tasks it or news from the farm closes.
#pragma once

#include <optional>
#include <span>
#include <string_view>
#include <vector>

#include "core/base/date.hpp"
#include "core/base/id.hpp"
#include "core/trade/check.hpp"
#include "core/trade/rows.hpp"
#include "core/trade/task.hpp"
#include "core/trade/turn.hpp"

namespace evenclaw {

/// One rule as data: days are counted from the visit; a time said with the act comes first.
struct FollowUpRule {
  std::string_view slug;
  int version;
  TaskKind kind;
  Owner owner;
  int earliest_days;
  int due_days;
  int overdue_days;
  std::string_view source;
  std::string_view words = {};  // "look at {where}"; the usual words of its kind when empty
};

std::span<const FollowUpRule> all_follow_up_rules();

/// The tasks made by a settled turn: what was called, then what its findings ask for by themselves
/// where the caller planned nothing (core/trade/follow_up_decided.hpp). `past` tells whether a
/// second block was stacked on one whose tasks are already open (none are made) or on one nobody
/// recorded (they are). Said twice of the same thing, the later word counts. Ids are derived from
/// what each task is and from `first`: the entry of the turn, or for a correction the entry its
/// corrections lead back to, so that every device that corrects the turn names the same task alike.
std::vector<TaskMade> tasks_made(const Turn& turn, const CowPast& past, Day visit_day,
                                 EntryId first);

/// The tasks of a corrected turn under the ids they had `before`: the same task is one of the same
/// rule on the same foot and claw (a claw nobody had called may be any), so that one that was
/// closed stays closed. On another foot it is a new task.
std::vector<TaskMade> with_ids_kept(std::vector<TaskMade> tasks, std::span<const TaskMade> before);

/// A task that is closed, and in what words.
struct TaskClosed {
  TaskId task;
  std::string how;  // "wrap taken off"
  friend bool operator==(const TaskClosed&, const TaskClosed&) = default;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("task", &TaskClosed::task, "the task");
    visit("how", &TaskClosed::how, "in whose words");
  }
};

/// Open tasks that the acts of a turn close: "wrap taken off" closes that foot's wrap-off, lifting
/// a foot closes its look. A look or a block check is closed by seeing it only from its earliest
/// day on: meeting the block after three days is not the check of four weeks. A look that followed
/// from a finding is asked for anew whenever the foot is seen at a later visit, and ends with a
/// block on that foot. How she walks is known when she walks sound, from the earliest day on also
/// when she came lame or was scored. Fetching the vet, and whatever nobody could answer, closes
/// nothing.
std::vector<TaskClosed> tasks_closed(const Turn& turn, const CowPast& past, Day visit_day);

/// What one piece of news does. `unclear` is set, and nothing closed, when it could mean more than
/// one thing (two wraps on and no foot named, for "wrap off"; "wraps off" or all four feet named
/// mean every wrap) or when no such wrap or block is known of her. News told at a visit is of what
/// was there when she came: a wrap put on at this visit is asked about, also with its foot. With
/// `is_of_this_visit` that was asked, and a foot on which there is no older one means this visit's.
/// A block the farmer has seen on her closes his own first look at it and not the check, which is
/// the trimmer's.
struct NewsEffect {
  std::vector<TaskClosed> closes;
  std::vector<TaskMade> makes;         // "still lame" makes a look due today
  std::optional<std::string> unclear;  // the question to ask
};

NewsEffect effect_of(const NewsSaid& news, const CowPast& past, Day today, EntryId entry,
                     bool is_of_this_visit = false);

}  // namespace evenclaw
