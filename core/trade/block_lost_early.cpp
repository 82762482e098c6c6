#include "core/trade/block_lost_early.hpp"

#include <algorithm>

#include "core/trade/checks/situation.hpp"
#include "core/trade/follow_up_looks.hpp"
#include "core/trade/follow_up_rules.hpp"
#include "core/trade/on_foot.hpp"

namespace evenclaw {

namespace {

bool still_hurts(const CaseRow& known, Foot foot) {
  Finding finding;
  finding.lesion = known.lesion;
  finding.degree = known.degree;
  return known.foot == foot && !known.not_found_on && hurts(finding);
}

/// Its removal was planned, and not to begin yet.
bool was_to_stay(const TaskRow& task, Foot foot, Claw claw, Day day) {
  return task.open && task.rule == block_off_rule.slug && task.foot == foot &&
         claws_agree(task.claw, claw) && day < task.earliest;
}

/// Whoever lifted it that day has decided what is done.
bool was_seen_on(const Rows& past, Foot foot, Day day) {
  return std::any_of(past.feet.begin(), past.feet.end(), [&](const FootRow& row) {
    const bool is_said = row.state == FootState::finding || row.state == FootState::nothing_found;
    return row.foot == foot && row.day == day && is_said;
  });
}

}  // namespace

std::optional<TaskMade> asked_of_lost_block(const Rows& past, Foot foot, Claw claw, Day day) {
  const bool hurts_her = std::any_of(past.cases.begin(), past.cases.end(),
                                     [&](const CaseRow& row) { return still_hurts(row, foot); });
  const bool is_early = std::any_of(past.tasks.begin(), past.tasks.end(), [&](const TaskRow& task) {
    return was_to_stay(task, foot, claw, day);
  });
  if (!hurts_her || !is_early || was_seen_on(past, foot, day)) return std::nullopt;
  return task_from(block_lost_early_rule, {foot, Claw::none, {}}, day);
}

std::optional<TaskMade> asked_of_lost_block(const Rows& past, const FootCall& call, Day day) {
  if (was_looked_at(call) || !blocked_after(past, call).none()) return std::nullopt;
  for (const Action& action : call.actions) {
    if (action.kind != ActionKind::block_came_off) continue;
    return asked_of_lost_block(past, call.foot, claw_meant(past, call, action), day);
  }
  return std::nullopt;
}

void close_lost_blocks(std::vector<TaskClosed>& closed, const Rows& past, const FootSet& feet) {
  for (const TaskRow& task : open_tasks(past)) {
    const bool is_meant = feet.empty() || (task.foot && feet.has(*task.foot));
    if (is_meant && is_of_lost_block(task)) close_task(closed, task, "block still on");
  }
}

bool is_of_lost_block(const TaskRow& task) {
  return task.rule == block_lost_early_rule.slug;
}

}  // namespace evenclaw
