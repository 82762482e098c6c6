#include "core/trade/medicine_use.hpp"

#include <algorithm>

namespace evenclaw {

namespace {

template <class F>
void for_each_medicine(Turn& turn, F&& act) {
  const auto of = [&](std::vector<Action>& actions) {
    for (Action& action : actions) {
      if (is_medicine_act(action.kind)) act(action);
    }
  };
  for (FootCall& call : turn.feet) of(call.actions);
  of(turn.actions);
}

}  // namespace

bool is_medicine_act(ActionKind kind) {
  switch (kind) {
    case ActionKind::spray:
    case ActionKind::paste:
    case ActionKind::powder:
    case ActionKind::gel:
    case ActionKind::given:
    case ActionKind::injected:
      return true;
    case ActionKind::opened:
    case ActionKind::loose_horn_off:
    case ActionKind::modelled:
    case ActionKind::claw_missing:
    case ActionKind::block_on:
    case ActionKind::block_stacked:
    case ActionKind::block_refitted:
    case ActionKind::block_again:
    case ActionKind::block_off:
    case ActionKind::block_came_off:
    case ActionKind::block_still_on:
    case ActionKind::block_unknown:
    case ActionKind::wrap_on:
    case ActionKind::wrap_off:
    case ActionKind::wrap_came_off:
    case ActionKind::wrap_still_on:
    case ActionKind::wrap_unknown:
    case ActionKind::see_again:
    case ActionKind::watch_her_walk:
    case ActionKind::vet:
    case ActionKind::told_farmer:
    case ActionKind::marked:
    case ActionKind::to_straw:
    case ActionKind::near_parlour:
    case ActionKind::short_walk:
    case ActionKind::cull_advised:
    case ActionKind::pain_relief_asked:
    case ActionKind::pain_relief_given:
    case ActionKind::photo:
    case ActionKind::vet_plan:
    case ActionKind::bleeding:
    case ActionKind::bone_showing:
    case ActionKind::pus_above:
    case ActionKind::blisters:
    case ActionKind::went_down:
    case ActionKind::near_calving:
    case ActionKind::heavy_in_calf:
    case ActionKind::sore_mouth:
    case ActionKind::fever:
    case ActionKind::anaesthetised:
    case ActionKind::amputated:
    case ActionKind::withheld:
    case ActionKind::milk_withheld:
    case ActionKind::meat_withheld:
    case ActionKind::no_withdrawal:
    case ActionKind::kicks:
    case ActionKind::jumps:
    case ActionKind::lies_down:
    case ActionKind::needs_hoist:
    case ActionKind::kicks_no_more:
    case ActionKind::jumps_no_more:
    case ActionKind::lies_down_no_more:
    case ActionKind::hoist_no_more:
      return false;
  }
  return false;
}

bool tells_withdrawal(ActionKind kind) {
  return kind == ActionKind::withheld || kind == ActionKind::milk_withheld ||
         kind == ActionKind::meat_withheld || kind == ActionKind::no_withdrawal;
}

Turn with_medicines(Turn turn, const MedicineRules& rules, Day visit_day) {
  for_each_medicine(turn, [&](Action& action) {
    if (action.medicine) return;
    const ListedProduct* listed = find_product(rules.list, action.product);
    if (listed != nullptr) action.medicine = given_on(*listed, visit_day);
  });
  return turn;
}

Turn with_ends_counted_from(Turn turn, Day right_day) {
  for_each_medicine(turn, [&](Action& action) {
    if (!action.medicine) return;
    action.medicine = given_on({action.medicine->product, action.medicine->as_listed}, right_day);
  });
  return turn;
}

bool is_withdrawal_stated(const Action& action) {
  return action.medicine && action.medicine->as_listed.milk && action.medicine->as_listed.meat_days;
}

WithdrawalKnown withdrawal_known(const Action& action) {
  if (action.kind == ActionKind::no_withdrawal) return WithdrawalKnown::none;
  if (tells_withdrawal(action.kind)) return WithdrawalKnown::held_back;
  if (!is_medicine_act(action.kind)) return WithdrawalKnown::no_medicine;
  if (action.medicine && (action.medicine->milk_till || action.medicine->meat_till)) {
    return WithdrawalKnown::held_back;
  }
  return is_withdrawal_stated(action) ? WithdrawalKnown::none : WithdrawalKnown::not_known;
}

std::vector<std::string> products_said(const Turn& turn) {
  std::vector<std::string> names;
  Turn said = turn;
  for_each_medicine(said, [&](const Action& action) {
    std::string name = product_or_act(action);
    if (std::find(names.begin(), names.end(), name) == names.end()) {
      names.push_back(std::move(name));
    }
  });
  return names;
}

std::string product_or_act(const Action& action) {
  return action.product.empty() ? std::string(word_of(action.kind)) : action.product;
}

}  // namespace evenclaw
