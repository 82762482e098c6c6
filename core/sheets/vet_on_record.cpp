#include "core/sheets/vet_on_record.hpp"

#include <algorithm>

#include "core/sheets/notifiable.hpp"
#include "core/sheets/task_blocks.hpp"
#include "core/trade/after_leaving.hpp"

namespace evenclaw {

namespace {

constexpr std::string_view block_on_painful_rule = "block-on-painful-claw";

bool came_since(const VisitView& view, CowId cow) {
  return std::any_of(
      view.input.rows.tasks.begin(), view.input.rows.tasks.end(), [&](const TaskRow& task) {
        return task.cow == cow && task.kind == TaskKind::vet && !task.open &&
               task.visit == view.input.visit.visit && task.closed_how != closed_as_she_left;
      });
}

/// What he was only asked for, as pain relief, he need not know of.
bool is_on_his_word(const ActionRow& row) {
  if (row.action == ActionKind::pain_relief_asked) return false;
  return row.by_whom == ByWhom::vet || row.directed_by == ByWhom::vet;
}

/// Foul wants a medicine that works in all of her, called of whatever foot, or the herd's plan.
bool is_foul_treated(const ActionRow& row) {
  const bool is_medicine = row.action == ActionKind::given || row.action == ActionKind::injected;
  return row.action == ActionKind::vet_plan || (is_medicine && is_on_his_word(row));
}

bool is_in_his_hands(const CowSeen& cow, const SignOfHer& sign) {
  const bool is_foul = sign.sign->until_then == Saying::no_wrap_on_foul;
  return std::any_of(cow.actions.begin(), cow.actions.end(), [&](const ActionRow* row) {
    const bool is_there = sign.foot && row->foot == sign.foot;
    return (is_there && is_on_his_word(*row)) || (is_foul && is_foul_treated(*row));
  });
}

template <class IsDecided>
bool any_decision(const CowSeen& cow, const SignOfHer& sign, IsDecided is_decided) {
  if (sign.sign->check.empty()) return false;
  return std::any_of(cow.warnings.begin(), cow.warnings.end(), [&](const WarningShown* shown) {
    return shown->warning.rule == sign.sign->check && shown->warning.foot == sign.foot &&
           is_decided(shown->decision);
  });
}

bool was_settled_in_words(const CowSeen& cow, const SignOfHer& sign) {
  const auto is_settled = [](const std::string& decision) {
    return !decision.empty() && decision != went_ahead;
  };
  const auto is_open = [&](const std::string& decision) { return !is_settled(decision); };
  return any_decision(cow, sign, is_settled) && !any_decision(cow, sign, is_open);
}

/// That both claws hurt is seen and weighed by whoever decides, be it only to go ahead: then no vet
/// is needed. Of a foot with a block the check of the block asks in its stead.
bool was_decided_on(const CowSeen& cow, const SignOfHer& sign) {
  if (sign.sign->check != both_claws_rule) return false;
  return std::any_of(cow.warnings.begin(), cow.warnings.end(), [&](const WarningShown* shown) {
    const std::string& rule = shown->warning.rule;
    const bool is_it = rule == both_claws_rule || rule == block_on_painful_rule;
    return is_it && shown->warning.foot == sign.foot && !shown->decision.empty();
  });
}

}  // namespace

bool is_vet_asked_for(const VisitView& view, const CowSeen& cow) {
  const bool is_called =
      std::any_of(cow.actions.begin(), cow.actions.end(),
                  [](const ActionRow* row) { return row->action == ActionKind::vet; });
  return is_called || std::any_of(view.tasks.begin(), view.tasks.end(), [&](const TaskRow* task) {
           return task->cow == cow.cow && task->visit == view.input.visit.visit &&
                  is_for_vet(*task) && !is_for_pain_relief(*task);
         });
}

bool is_past_the_vet(const VisitView& view, CowId cow) {
  return who_left(view, cow) != nullptr || came_since(view, cow);
}

bool was_gone_past(const CowSeen& cow, const SignOfHer& sign) {
  return any_decision(cow, sign,
                      [](const std::string& decision) { return decision == went_ahead; });
}

VetOnRecord vet_on_record(const VisitView& view, const CowSeen& cow, const SignOfHer& sign) {
  if (is_past_the_vet(view, cow.cow)) return VetOnRecord::knows;
  if (is_vet_asked_for(view, cow)) return VetOnRecord::asked;
  const bool is_known =
      is_in_his_hands(cow, sign) || was_settled_in_words(cow, sign) || was_decided_on(cow, sign);
  return is_known ? VetOnRecord::knows : VetOnRecord::no;
}

std::vector<SignOfHer> signs_without_vet(const VisitView& view, const CowSeen& cow) {
  std::vector<SignOfHer> signs;
  const bool stays = may_be_notifiable(view, cow.cow);
  const bool has_left = who_left(view, cow.cow) != nullptr;
  if (came_since(view, cow.cow) || (has_left && !stays)) return signs;
  for (const SignOfHer& sign : signs_of_her(cow)) {
    const bool is_of_illness = sign.sign->seen && is_sign_of_illness(*sign.sign->seen);
    const bool is_open = vet_on_record(view, cow, sign) == VetOnRecord::no;
    if (is_open || (stays && is_of_illness)) signs.push_back(sign);
  }
  return signs;
}

std::vector<WordsOfHer> vet_only_named(const VisitView& view, const CowSeen& cow) {
  const bool is_settled = is_past_the_vet(view, cow.cow) || is_vet_asked_for(view, cow);
  return is_settled ? std::vector<WordsOfHer>() : words_naming_the_vet(cow);
}

}  // namespace evenclaw
