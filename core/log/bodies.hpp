// The bodies of the kinds of entry this version writes, each at its version.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/base/date.hpp"
#include "core/base/id.hpp"
#include "core/log/cow_registered.hpp"
#include "core/log/device_bodies.hpp"
#include "core/trade/follow_up.hpp"
#include "core/trade/task.hpp"
#include "core/trade/turn.hpp"
#include "core/trade/warning.hpp"

namespace evenclaw {

// Every body names its `kind` and `version`. A version that changes gets an up-caster in
// core/log/upcast.cpp; old golden entries stay in tests/compat for ever.

struct HerdRegistered {
  static constexpr std::string_view kind = "herd_registered";
  static constexpr std::int32_t version = 1;
  std::string name;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("name", &HerdRegistered::name, "name of the herd");
  }
};

struct VisitOpened {
  static constexpr std::string_view kind = "visit_opened";
  static constexpr std::int32_t version = 2;
  VisitId visit;
  Day day;
  std::int32_t ordinal = 1;
  FootSet todays_feet;
  bool from_paper = false;  // typed later from what was written down; since version 2

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("visit", &VisitOpened::visit, "derived from herd, day and ordinal");
    visit("day", &VisitOpened::day, "day in the herd's time zone");
    visit("ordinal", &VisitOpened::ordinal, "which visit of that day");
    visit("todays_feet", &VisitOpened::todays_feet, "feet lifted today");
    visit("from_paper", &VisitOpened::from_paper,
          "typed later from paper: its day is known, no time of it is");
  }
};

struct VisitClosed {
  static constexpr std::string_view kind = "visit_closed";
  static constexpr std::int32_t version = 1;
  VisitId visit;
  std::vector<std::string> left_open;  // what was asked and stayed open, as shown

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("visit", &VisitClosed::visit, "visit");
    visit("left_open", &VisitClosed::left_open, "questions that stayed open, as shown");
  }
};

/// Only what is given changes; the visit keeps its id.
struct VisitCorrected {
  static constexpr std::string_view kind = "visit_corrected";
  static constexpr std::int32_t version = 1;
  VisitId visit;
  std::optional<Day> day;
  std::optional<FootSet> todays_feet;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("visit", &VisitCorrected::visit, "visit");
    visit("day", &VisitCorrected::day, "the right day");
    visit("todays_feet", &VisitCorrected::todays_feet, "the right feet");
  }
};

struct TurnRecorded {
  static constexpr std::string_view kind = "turn";
  static constexpr std::int32_t version = 4;
  VisitId visit;
  CowId cow;
  std::vector<std::string> words;  // the lines as said
  Turn turn;                       // settled
  std::vector<WarningShown> warnings;
  std::vector<TaskMade> tasks;
  std::vector<TaskClosed> closes;
  std::vector<std::string> called_first;  // what she was called before her number was put right
  std::optional<Instant> began = {};  // only when she was let out as it was called, line by line

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("visit", &TurnRecorded::visit, "visit");
    visit("cow", &TurnRecorded::cow, "cow");
    visit("words", &TurnRecorded::words, "the lines as said");
    visit("turn", &TurnRecorded::turn, "what they mean");
    visit("warnings", &TurnRecorded::warnings, "warnings shown and what was decided");
    visit("tasks", &TurnRecorded::tasks, "tasks it made");
    visit("closes", &TurnRecorded::closes, "open tasks it closed");
    visit("called_first", &TurnRecorded::called_first,
          "what she was called before her number was put right");
    visit("began", &TurnRecorded::began,
          "when she was named; absent of what came from paper, a file or a pipe, or broke off");
  }
};

/// What was told about a cow outside her turn: the since-last-time talk, or a call from the farm.
struct TaskClosedBody {
  static constexpr std::string_view kind = "task_closed";
  static constexpr std::int32_t version = 2;
  CowId cow;
  std::optional<VisitId> visit;
  Day day;
  News news = News::looked_at;
  FootSet feet;
  std::string words;
  std::vector<TaskClosed> closes;
  std::vector<TaskMade> tasks;
  std::optional<std::string> asked;  // it could mean more than one thing, so it closes nothing

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("cow", &TaskClosedBody::cow, "cow");
    visit("visit", &TaskClosedBody::visit, "visit at which it was told, if one");
    visit("day", &TaskClosedBody::day, "day it was told");
    visit("news", &TaskClosedBody::news, "what was told");
    visit("feet", &TaskClosedBody::feet, "feet it was told of");
    visit("words", &TaskClosedBody::words, "as said");
    visit("closes", &TaskClosedBody::closes, "tasks it closed");
    visit("tasks", &TaskClosedBody::tasks, "tasks it made");
    visit("asked", &TaskClosedBody::asked, "what was asked about it; it closes nothing then");
  }
};

struct TaskMoved {
  static constexpr std::string_view kind = "task_moved";
  static constexpr std::int32_t version = 1;
  CowId cow;
  TaskId task;
  Day due;
  Day overdue;
  std::string words;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("cow", &TaskMoved::cow, "cow");
    visit("task", &TaskMoved::task, "task");
    visit("due", &TaskMoved::due, "the new day");
    visit("overdue", &TaskMoved::overdue, "late from this day");
    visit("words", &TaskMoved::words, "why");
  }
};

/// A cow gets a number: an unnumbered one is recognised, or a tag was replaced.
struct NumberGiven {
  static constexpr std::string_view kind = "number_given";
  static constexpr std::int32_t version = 1;
  CowId cow;
  std::string number;
  Day valid_from;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("cow", &NumberGiven::cow, "cow");
    visit("number", &NumberGiven::number, "herd number as given");
    visit("valid_from", &NumberGiven::valid_from, "first day it is hers");
  }
};

struct CowLeft {
  static constexpr std::string_view kind = "cow_left";
  static constexpr std::int32_t version = 1;
  CowId cow;
  Day day;
  std::string words;
  std::vector<TaskClosed> closes;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("cow", &CowLeft::cow, "cow");
    visit("day", &CowLeft::day, "day it was told");
    visit("words", &CowLeft::words, "as said");
    visit("closes", &CowLeft::closes, "tasks it closed");
  }
};

struct SameCow {
  static constexpr std::string_view kind = "same_cow";
  static constexpr std::int32_t version = 1;
  CowId first;
  CowId second;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("first", &SameCow::first, "one cow");
    visit("second", &SameCow::second, "who is the same as this one");
  }
};

struct SameCowTakenBack {
  static constexpr std::string_view kind = "same_cow_taken_back";
  static constexpr std::int32_t version = 1;
  EntryId same_cow;  // the entry that united them

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("same_cow", &SameCowTakenBack::same_cow, "the entry that united them");
  }
};

struct Setting {
  static constexpr std::string_view kind = "setting";
  static constexpr std::int32_t version = 1;
  std::string name;
  std::string value;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("name", &Setting::name, "which setting");
    visit("value", &Setting::value, "its value");
  }
};

/// Takes the body of an entry away for good; envelope and digest stay.
struct Redact {
  static constexpr std::string_view kind = "redact";
  static constexpr std::int32_t version = 1;
  EntryId target;
  std::string words;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("target", &Redact::target, "the entry whose body is taken away");
    visit("words", &Redact::words, "why");
  }
};

}  // namespace evenclaw
