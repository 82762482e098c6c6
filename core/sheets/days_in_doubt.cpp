#include "core/sheets/days_in_doubt.hpp"

#include <algorithm>
#include <string_view>

#include "core/trade/follow_up_rules.hpp"
#include "core/trade/on_foot.hpp"

namespace evenclaw {

namespace {

constexpr std::string_view asked_of_the_day = "comes-off-on-that-day";

bool is_asked(const CowSeen& cow, const TaskRow& task) {
  return std::any_of(cow.warnings.begin(), cow.warnings.end(), [&](const WarningShown* shown) {
    const Warning& warning = shown->warning;
    const bool is_there = warning.foot == task.foot && claws_agree(warning.claw, task.claw);
    return warning.rule == asked_of_the_day && is_there && shown->decision.empty();
  });
}

/// The last good day of its rule; nothing of a task that takes nothing off.
std::optional<Day> last_good_day(const TaskRow& task) {
  if (task.rule == wrap_off_rule.slug) return task.made_on + wrap_off_rule.overdue_days - 1;
  if (task.rule == block_off_rule.slug) return task.made_on + block_off_rule.overdue_days - 1;
  return std::nullopt;
}

}  // namespace

std::optional<TaskRow> day_in_doubt(const VisitSheetInput& input, const CowSeen& cow,
                                    const TaskRow& task, const Wording& wording) {
  const std::optional<Day> last = last_good_day(task);
  const bool is_of_today = task.visit == input.visit.visit && task.made_on == input.visit.day;
  if (!last || !is_of_today || !is_asked(cow, task)) return std::nullopt;
  TaskRow told = task;
  told.due = std::min(task.due, *last);
  told.earliest = std::min(task.earliest, told.due);
  told.overdue = told.due + 1;
  const std::string said = wording.date(task.due, input.visit.day);
  told.words = wording.say(Saying::day_in_doubt, {{"what", task.words}, {"date", said}});
  return told;
}

}  // namespace evenclaw
