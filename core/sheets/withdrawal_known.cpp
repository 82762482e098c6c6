#include "core/sheets/withdrawal_known.hpp"

#include <algorithm>

#include "core/trade/medicine_use.hpp"

namespace evenclaw {

namespace {

std::optional<HalfNotKnown> missing_half(const MilkAndMeat& known) {
  if (known.milk == known.meat) return std::nullopt;
  return known.milk ? HalfNotKnown::meat : HalfNotKnown::milk;
}

/// What is held back by a list nobody kept is known as it stands.
MilkAndMeat listed_of(const VisitView& view, const ActionRow& row) {
  const ProductStated* stated = stated_of(view, row);
  if (stated != nullptr) return {stated->states_milk, stated->states_meat};
  const bool is_listed = row.withdrawal == WithdrawalKnown::held_back;
  return {is_listed, is_listed};
}

bool may_hold_her_back(const ActionRow& row) {
  return row.withdrawal != WithdrawalKnown::none &&
         (is_medicine_act(row.action) || is_given_unnamed(row.action));
}

/// Told of no medicine, with what was told so beside it or later.
std::optional<HalfNotKnown> half_not_told(const std::vector<SaidOf>& said,
                                          const ActionRow& telling) {
  std::vector<const ActionRow*> of_none;
  bool is_of_none = false;
  for (const SaidOf& one : said) {
    const bool is_it = one.telling == &telling;
    is_of_none = is_of_none || (is_it && one.may_be_of.empty());
    const bool is_since = is_of_none || one.telling->visit == telling.visit;
    if (one.may_be_of.empty() && is_since) of_none.push_back(one.telling);
  }
  return is_of_none ? missing_half(milk_and_meat_of(of_none)) : std::nullopt;
}

}  // namespace

std::optional<HalfNotKnown> half_not_known(const VisitView& view, const std::vector<SaidOf>& said,
                                           const ActionRow& row) {
  if (tells_withdrawal(row.action)) return half_not_told(said, row);
  if (!may_hold_her_back(row)) return std::nullopt;
  const MilkAndMeat listed = listed_of(view, row);
  const MilkAndMeat told = milk_and_meat_of(said_of(said, row));
  return missing_half({listed.milk || told.milk, listed.meat || told.meat});
}

std::vector<HalfNotKnown> halves_not_known(const VisitView& view,
                                           const std::vector<const ActionRow*>& acts) {
  const std::vector<SaidOf> said = withdrawals_said(acts);
  std::vector<HalfNotKnown> halves;
  const auto add = [&](const std::optional<HalfNotKnown>& half) {
    const bool is_new = half && std::find(halves.begin(), halves.end(), *half) == halves.end();
    if (is_new) halves.push_back(*half);
  };
  for (const ActionRow* row : acts) add(half_not_known(view, said, *row));
  std::sort(halves.begin(), halves.end());
  return halves;
}

std::string half_words(HalfNotKnown half, const Wording& wording) {
  switch (half) {
    case HalfNotKnown::milk:
      return wording.say(Saying::milk_not_known);
    case HalfNotKnown::meat:
      return wording.say(Saying::meat_not_known);
  }
  return {};
}

}  // namespace evenclaw
