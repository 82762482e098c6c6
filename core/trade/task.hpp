// Tasks: what, who, by when; and how news from the farm closes them.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/date.hpp"
#include "core/base/enum_words.hpp"
#include "core/base/id.hpp"
#include "core/trade/foot.hpp"

namespace evenclaw {

enum class TaskKind {
  wrap_off,
  block_check,
  block_off,
  look_at_foot,
  watch_her_walk,
  vet,
  withdrawal_end,  // her milk or meat is held back up to and with the day it is due
  routine_trim     // never written down: computed from what is known of her (routine_trim.hpp)
};

template <>
struct EnumWords<TaskKind> {
  static constexpr EnumWord<TaskKind> table[] = {{TaskKind::wrap_off, "wrap_off"},
                                                 {TaskKind::block_check, "block_check"},
                                                 {TaskKind::block_off, "block_off"},
                                                 {TaskKind::look_at_foot, "look_at_foot"},
                                                 {TaskKind::watch_her_walk, "watch_her_walk"},
                                                 {TaskKind::vet, "vet"},
                                                 {TaskKind::withdrawal_end, "withdrawal_end"},
                                                 {TaskKind::routine_trim, "routine_trim"}};
};

enum class Owner { farmer, trimmer, vet };

template <>
struct EnumWords<Owner> {
  static constexpr EnumWord<Owner> table[] = {
      {Owner::farmer, "farmer"}, {Owner::trimmer, "trimmer"}, {Owner::vet, "vet"}};
};

/// A task as it is written into the entry that made it. Dates are decided then and never moved
/// by a later version of the rule.
struct TaskMade {
  TaskId task;
  TaskKind kind = TaskKind::look_at_foot;
  std::optional<Foot> foot;
  Claw claw = Claw::none;
  Owner owner = Owner::farmer;
  Day earliest;
  Day due;
  Day overdue;        // from this day on it is late
  std::string words;  // "wrap off left hind"
  std::string rule;   // slug of the rule that made it
  std::int32_t rule_version = 1;

  friend bool operator==(const TaskMade&, const TaskMade&) = default;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("task", &TaskMade::task, "id of the task");
    visit("kind", &TaskMade::kind, "what is to be done");
    visit("foot", &TaskMade::foot, "on which foot, if one");
    visit("claw", &TaskMade::claw, "on which claw, if one");
    visit("owner", &TaskMade::owner, "who does it");
    visit("earliest", &TaskMade::earliest, "not before");
    visit("due", &TaskMade::due, "by this day");
    visit("overdue", &TaskMade::overdue, "late from this day");
    visit("words", &TaskMade::words, "as told to the owner");
    visit("rule", &TaskMade::rule, "the rule that made it");
    visit("rule_version", &TaskMade::rule_version, "and its version");
  }
};

/// The words of a task as told to its owner, at most 60 characters: "wrap off left hind",
/// "block check left hind, inside claw", "see her again" (no foot).
std::string task_words(TaskKind kind, std::optional<Foot> foot, Claw claw);

/// The same from a pattern: "{where}" becomes "left hind, inside claw", or "her" without a foot.
std::string task_words(std::string_view pattern, std::optional<Foot> foot, Claw claw);

/// What became of something since last time, as told: "412, 513 wraps off; 77 gone; 620 still
/// lame".
enum class News {
  wrap_off,
  wrap_came_off,
  wrap_still_on,
  block_off,
  block_came_off,
  block_still_on,
  looked_at,  // the look was done, nothing more to say
  vet_came,
  still_lame,
  walks_sound,
  gone,
  // How she has to be handled, told of a cow that does not stand in the crush.
  kicks,
  jumps,
  lies_down,
  needs_hoist,
  kicks_no_more,
  jumps_no_more,
  lies_down_no_more,
  hoist_no_more
};

template <>
struct EnumWords<News> {
  static constexpr EnumWord<News> table[] = {{News::wrap_off, "wrap_off"},
                                             {News::wrap_came_off, "wrap_came_off"},
                                             {News::wrap_still_on, "wrap_still_on"},
                                             {News::block_off, "block_off"},
                                             {News::block_came_off, "block_came_off"},
                                             {News::block_still_on, "block_still_on"},
                                             {News::looked_at, "looked_at"},
                                             {News::vet_came, "vet_came"},
                                             {News::still_lame, "still_lame"},
                                             {News::walks_sound, "walks_sound"},
                                             {News::gone, "gone"},
                                             {News::kicks, "kicks"},
                                             {News::jumps, "jumps"},
                                             {News::lies_down, "lies_down"},
                                             {News::needs_hoist, "needs_hoist"},
                                             {News::kicks_no_more, "kicks_no_more"},
                                             {News::jumps_no_more, "jumps_no_more"},
                                             {News::lies_down_no_more, "lies_down_no_more"},
                                             {News::hoist_no_more, "hoist_no_more"}};
};

/// One clause of the since-last-time talk, for one cow. `feet` empty means no foot was named.
struct NewsSaid {
  std::string number;
  News news = News::looked_at;
  FootSet feet;
  bool all = false;  // "wraps off": all that are on her
  friend bool operator==(const NewsSaid&, const NewsSaid&) = default;
};

}  // namespace evenclaw
