// When the next routine trim of a cow is due: from her calving, drying off and trims, nothing else.
#pragma once

#include <optional>
#include <span>
#include <string_view>
#include <vector>

#include "core/base/date.hpp"
#include "core/base/enum_words.hpp"
#include "core/trade/cow_facts.hpp"
#include "core/trade/rows.hpp"

namespace evenclaw {

/// The day a rule counts from.
enum class RoutineAnchor { calved, dry_off, due_to_calve };

template <>
struct EnumWords<RoutineAnchor> {
  static constexpr EnumWord<RoutineAnchor> table[] = {
      {RoutineAnchor::calved, "calved"},
      {RoutineAnchor::dry_off, "dry_off"},
      {RoutineAnchor::due_to_calve, "due_to_calve"}};
};

/// One rule as data: days are counted from the anchor, negative ones before it.
struct RoutineTrimRule {
  std::string_view slug;
  int version;
  RoutineAnchor anchor;
  int from_days;
  int due_days;
  int overdue_days;
  int until_days;  // afterwards it is not asked for any more
  std::string_view words;
  std::string_view source;
};

std::span<const RoutineTrimRule> all_routine_trim_rules();

/// A trim that is due: it may be done from `from` on, is due by `due` and late from `overdue` on.
struct RoutineTrimDue {
  const RoutineTrimRule* rule;
  Day from;
  Day due;
  Day overdue;
};

/// The routine trim due on `today`, if one is; what only comes later is not told. A trim since the
/// window opened closes it, and so does one in the four weeks before (our judgement). A window that
/// opened later stands for the one before it. Nothing is due of a cow of whom no calving, drying
/// off or expected calving is known.
std::optional<RoutineTrimDue> routine_trim_due(const CowFacts& facts, std::span<const Day> trims,
                                               Day today);

/// The days on which she was trimmed: her turn was done, both hind feet were lifted and nobody said
/// that they were not trimmed. One foot lifted for its block is no routine trim.
std::vector<Day> trims_of(std::span<const TurnRow> turns, std::span<const FootRow> feet);

}  // namespace evenclaw
