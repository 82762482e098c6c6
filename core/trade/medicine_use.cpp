#include "core/trade/medicine_use.hpp"

#include <algorithm>
#include <iterator>
#include <span>

namespace evenclaw {

namespace {

/// The feet first, in their order, then what concerns all of her; of a turn that may be changed or
/// of one that may not.
template <class AnyTurn, class F>
void for_each_medicine(AnyTurn& turn, F&& act) {
  const auto of = [&](auto& actions) {
    for (auto& action : actions) {
      if (is_medicine_act(action.kind)) act(action);
    }
  };
  for (auto& call : turn.feet) of(call.actions);
  of(turn.actions);
}

MilkAndMeat told_in(std::span<const Action> actions) {
  MilkAndMeat told;
  for (const Action& action : actions) {
    if (!tells_withdrawal(action.kind)) continue;
    told.milk = told.milk || action.kind != ActionKind::meat_withheld;
    told.meat = told.meat || action.kind != ActionKind::milk_withheld;
  }
  return told;
}

}  // namespace

bool is_medicine_act(ActionKind kind) {
  constexpr ActionKind acts[] = {ActionKind::spray, ActionKind::paste, ActionKind::powder,
                                 ActionKind::gel,   ActionKind::given, ActionKind::injected};
  return std::find(std::begin(acts), std::end(acts), kind) != std::end(acts);
}

bool is_given_unnamed(ActionKind kind) {
  return kind == ActionKind::pain_relief_given || kind == ActionKind::anaesthetised ||
         kind == ActionKind::vet_plan;
}

bool tells_withdrawal(ActionKind kind) {
  return kind == ActionKind::withheld || kind == ActionKind::milk_withheld ||
         kind == ActionKind::meat_withheld || kind == ActionKind::no_withdrawal;
}

MilkAndMeat withdrawal_told(const Turn& turn) {
  return told_in(turn.actions);
}

MilkAndMeat withdrawal_told_of(const Turn& turn, const Action& action) {
  const std::span<const Action> all = turn.actions;
  const auto is_it = [&](const Action& other) { return &other == &action; };
  const auto at = std::find_if(all.begin(), all.end(), is_it);
  return told_in(at == all.end() ? all : std::span<const Action>(at, all.end()));
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
  for_each_medicine(turn, [&](const Action& action) {
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
