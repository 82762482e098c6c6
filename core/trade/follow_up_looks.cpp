#include "core/trade/follow_up_looks.hpp"

#include <algorithm>
#include <optional>

#include "core/trade/block_lost_early.hpp"
#include "core/trade/follow_up_decided.hpp"
#include "core/trade/follow_up_rules.hpp"
#include "core/trade/lame_score.hpp"
#include "core/trade/on_foot.hpp"

namespace evenclaw {

namespace {

bool has_act(const FootCall& call, ActFollowUp follow_up) {
  return std::any_of(call.actions.begin(), call.actions.end(), [&](const Action& action) {
    return decision_on(action.kind).follow_up == follow_up;
  });
}

/// A treatment of the skin, or a wrap put on today.
bool was_treated(const FootCall& call) {
  return has_act(call, ActFollowUp::look_after_dd) || has_act(call, ActFollowUp::wrap_on);
}

/// Treated without its stage being called, it was raw enough to be treated.
bool may_be_raw(DdStage stage) {
  const DdStageFacts* facts = facts_of(stage);
  return facts == nullptr || facts->activity == DdActivity::active;
}

bool asks_for_horn_looks(const FootCall& call, const Finding& finding) {
  const bool opened = has_act(call, ActFollowUp::look_after_cut);
  if (finding.dd_infected) return true;  // in a growth too: it does not heal by itself
  switch (decision_on(finding.lesion).follow_up) {
    case LesionFollowUp::horn_looks:
      return opened || finding.degree != Degree::slight;
    case LesionFollowUp::horn_looks_when_opened:
      return opened;
    case LesionFollowUp::dd_look_when_treated:
    case LesionFollowUp::foul_look:
    case LesionFollowUp::none:
      return false;
  }
  return false;
}

/// Called raw, it is looked at though nothing was put on it: somebody has to decide what is done.
bool asks_for_dd_look(const FootCall& call, const Finding& finding) {
  const bool is_called_raw = finding.stage != DdStage::not_called;
  return decision_on(finding.lesion).follow_up == LesionFollowUp::dd_look_when_treated &&
         may_be_raw(finding.stage) && (is_called_raw || was_treated(call));
}

bool is_foul(const Finding& finding) {
  return decision_on(finding.lesion).follow_up == LesionFollowUp::foul_look;
}

template <class Asks>
bool any_finding(const FootCall& call, Asks asks) {
  return std::any_of(call.findings.begin(), call.findings.end(), asks);
}

/// See again, or the vet, was called for that foot or for her.
bool is_planned(std::span<const TaskMade> called, Foot foot) {
  return std::any_of(called.begin(), called.end(), [&](const TaskMade& task) {
    const bool is_look = task.rule == see_again_rule.slug || task.rule == vet_rule.slug;
    return is_look && (!task.foot || *task.foot == foot);
  });
}

/// Asked for already when she was called before at this visit.
bool is_asked_today(const Rows& past, const TaskMade& look, Day visit_day) {
  return std::any_of(past.tasks.begin(), past.tasks.end(), [&](const TaskRow& task) {
    return task.open && task.rule == look.rule && task.foot == look.foot &&
           task.made_on == visit_day;
  });
}

void add_foot_looks(std::vector<TaskMade>& looks, const FootCall& call, const Rows& past,
                    Day visit_day) {
  const Aim aim = {call.foot, Claw::none, {}};
  const bool is_blocked = !blocked_after(past, call).none();
  const auto cut = [&](const Finding& finding) { return asks_for_horn_looks(call, finding); };
  const auto sore = [&](const Finding& finding) { return asks_for_dd_look(call, finding); };
  if (!is_blocked && any_finding(call, cut)) {
    looks.push_back(task_from(horn_first_look_rule, aim, visit_day));
    looks.push_back(task_from(horn_look_rule, aim, visit_day));
  }
  if (any_finding(call, sore)) looks.push_back(task_from(dd_look_rule, aim, visit_day));
  if (any_finding(call, is_foul)) looks.push_back(task_from(foul_look_rule, aim, visit_day));
  const std::optional<TaskMade> lost = asked_of_lost_block(past, call, visit_day);
  if (lost) looks.push_back(*lost);
}

/// Some task will bring somebody to her feet or to her walk.
bool asks_for_her(std::span<const TaskMade> tasks) {
  return std::any_of(tasks.begin(), tasks.end(), [](const TaskMade& task) {
    return task.kind != TaskKind::wrap_off && task.rule != pain_relief_rule.slug;
  });
}

/// Somebody told that she is still lame, and this turn ends what was asked for then: nobody has
/// said that she walks well.
bool was_told_still_lame(const Turn& turn, const Rows& past, Day visit_day) {
  return std::any_of(past.tasks.begin(), past.tasks.end(), [&](const TaskRow& task) {
    if (!task.open) return task.closed_on == visit_day && task.closed_how == told_still_lame;
    return task.rule == still_lame_rule.slug &&
           std::any_of(turn.feet.begin(), turn.feet.end(), [&](const FootCall& call) {
             return was_looked_at(call) && (!task.foot || task.foot == call.foot);
           });
  });
}

}  // namespace

bool was_looked_at(const FootCall& call) {
  return call.state == FootState::finding || call.state == FootState::nothing_found ||
         !call.findings.empty();
}

bool follows_from_open_horn(const TaskRow& task) {
  return task.rule == horn_first_look_rule.slug || task.rule == horn_look_rule.slug;
}

bool follows_from_finding(const TaskRow& task) {
  return follows_from_open_horn(task) || task.rule == dd_look_rule.slug ||
         task.rule == foul_look_rule.slug;
}

bool is_lame(const Turn& turn) {
  return came_for(turn, Reason::lame) || !turn.lame.empty() || is_lame_score(turn.mobility);
}

std::vector<TaskMade> looks_asked_for(const Turn& turn, const Rows& past,
                                      std::span<const TaskMade> called, Day visit_day) {
  std::vector<TaskMade> looks;
  for (const FootCall& call : turn.feet) {
    if (!is_planned(called, call.foot)) add_foot_looks(looks, call, past, visit_day);
  }
  std::erase_if(looks, [&](const TaskMade& look) { return is_asked_today(past, look, visit_day); });
  const bool is_done = turn.end == TurnEnd::done && !turn.walks_sound;
  const bool may_be_lame = is_lame(turn) || was_told_still_lame(turn, past, visit_day);
  if (is_done && may_be_lame && !asks_for_her(called) && !asks_for_her(looks)) {
    looks.push_back(task_from(lame_walk_rule, {}, visit_day));
  }
  return looks;
}

}  // namespace evenclaw
