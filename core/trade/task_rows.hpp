// Rows of the picture about what is still to be done or asked.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "core/base/date.hpp"
#include "core/base/enum_words.hpp"
#include "core/base/id.hpp"
#include "core/trade/foot.hpp"
#include "core/trade/task.hpp"

namespace evenclaw {

struct TaskRow {
  static constexpr std::string_view table = "task";
  static constexpr int key_columns = 3;
  HerdId herd;
  CowId cow;
  TaskId task;
  VisitId visit;
  Day made_on;
  TaskKind kind = TaskKind::look_at_foot;
  std::optional<Foot> foot;
  Claw claw = Claw::none;
  Owner owner = Owner::farmer;
  Day earliest;
  Day due;
  Day overdue;
  std::string words;
  std::string rule;
  std::int32_t rule_version = 1;
  bool open = true;
  std::optional<Day> closed_on;
  std::string closed_how;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("herd", &TaskRow::herd, "herd");
    visit("cow", &TaskRow::cow, "cow");
    visit("task", &TaskRow::task, "task");
    visit("visit", &TaskRow::visit, "visit that made it");
    visit("made_on", &TaskRow::made_on, "day it was made");
    visit("kind", &TaskRow::kind, "what is to be done");
    visit("foot", &TaskRow::foot, "on which foot, if one");
    visit("claw", &TaskRow::claw, "on which claw, if one");
    visit("owner", &TaskRow::owner, "who does it");
    visit("earliest", &TaskRow::earliest, "not before");
    visit("due", &TaskRow::due, "by this day");
    visit("overdue", &TaskRow::overdue, "late from this day");
    visit("words", &TaskRow::words, "as told to the owner");
    visit("rule", &TaskRow::rule, "the rule that made it");
    visit("rule_version", &TaskRow::rule_version, "and its version");
    visit("open", &TaskRow::open, "nobody has closed it yet");
    visit("closed_on", &TaskRow::closed_on, "day it was closed");
    visit("closed_how", &TaskRow::closed_how, "in whose words");
  }
};

/// What has to be asked of a person before the visit closes, or is flagged for the record.
enum class DoubtKind {
  unnumbered,
  doubtful_number,
  told_gone,  // told gone that day, and in the crush after that
  unfinished,
  not_done,
  called_twice,
  lifted_not_called,  // a foot was spoken of but neither finding nor "nothing found" was said
  place_not_called,
  degree_not_called,
  stage_not_called,
  unanswered,  // a warning nobody answered
  number_given_twice,
  two_versions  // one id with different bytes
};

template <>
struct EnumWords<DoubtKind> {
  static constexpr EnumWord<DoubtKind> table[] = {
      {DoubtKind::unnumbered, "unnumbered"},
      {DoubtKind::doubtful_number, "doubtful_number"},
      {DoubtKind::told_gone, "told_gone"},
      {DoubtKind::unfinished, "unfinished"},
      {DoubtKind::not_done, "not_done"},
      {DoubtKind::called_twice, "called_twice"},
      {DoubtKind::lifted_not_called, "lifted_not_called"},
      {DoubtKind::place_not_called, "place_not_called"},
      {DoubtKind::degree_not_called, "degree_not_called"},
      {DoubtKind::stage_not_called, "stage_not_called"},
      {DoubtKind::unanswered, "unanswered"},
      {DoubtKind::number_given_twice, "number_given_twice"},
      {DoubtKind::two_versions, "two_versions"}};
};

struct DoubtRow {
  static constexpr std::string_view table = "doubt";
  static constexpr int key_columns = 4;
  HerdId herd;
  CowId cow;
  EntryId turn;
  std::int32_t position = 0;
  VisitId visit;
  Day day;
  DoubtKind kind = DoubtKind::unnumbered;
  std::optional<Foot> foot;
  std::string words;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("herd", &DoubtRow::herd, "herd");
    visit("cow", &DoubtRow::cow, "cow");
    visit("turn", &DoubtRow::turn, "the entry in doubt");
    visit("position", &DoubtRow::position, "which doubt of that entry");
    visit("visit", &DoubtRow::visit, "visit");
    visit("day", &DoubtRow::day, "day of the visit");
    visit("kind", &DoubtRow::kind, "what is in doubt");
    visit("foot", &DoubtRow::foot, "on which foot, if one");
    visit("words", &DoubtRow::words, "what to ask");
  }
};

}  // namespace evenclaw
