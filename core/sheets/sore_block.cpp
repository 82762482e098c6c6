#include "core/sheets/sore_block.hpp"

#include <algorithm>

#include "core/trade/follow_up_rules.hpp"
#include "core/trade/on_foot.hpp"

namespace evenclaw {

namespace {

bool is_on_sore_claw(const TaskRow& task) {
  return task.open && task.rule == block_on_pain_rule.slug;
}

bool is_of_that_block(const TaskRow& task, const TaskRow& sore) {
  const bool is_of_block = task.kind == TaskKind::block_check || task.kind == TaskKind::block_off;
  const bool is_there = task.herd == sore.herd && task.cow == sore.cow && task.foot == sore.foot;
  return is_of_block && is_there && claws_agree(task.claw, sore.claw);
}

}  // namespace

void tell_sore_blocks(std::vector<TaskRow>& tasks, const Wording& wording) {
  for (TaskRow& task : tasks) {
    if (!task.open || is_on_sore_claw(task)) continue;
    const bool is_it = std::any_of(tasks.begin(), tasks.end(), [&](const TaskRow& sore) {
      return is_on_sore_claw(sore) && is_of_that_block(task, sore);
    });
    if (is_it) task.words = wording.say(BoxSaying::if_trimmer_leaves_it, {{"what", task.words}});
  }
}

}  // namespace evenclaw
