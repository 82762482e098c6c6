#include "core/sheets/left_to_ask.hpp"

#include <algorithm>
#include <tuple>

#include "core/sheets/withdrawal_said.hpp"
#include "core/trade/after_leaving.hpp"
#include "core/trade/medicine_use.hpp"

namespace evenclaw {

namespace {

/// Of a cow who left only what whoever has her now must know of.
bool is_no_longer_asked(const CowRow& left, std::optional<HalfNotKnown> half) {
  const MilkAndMeat held = held_after(way_left(left.left_words));
  if (half == HalfNotKnown::milk) return !held.milk;
  return !held.meat;
}

void leave_what_is_asked(FloorEnds& floor, const CowRow& left) {
  const MilkAndMeat held = held_after(way_left(left.left_words));
  if (!held.milk) floor.milk = std::nullopt;
  if (!held.meat) floor.meat = std::nullopt;
}

bool is_given(const ActionRow& row) {
  return is_medicine_act(row.action) || is_given_unnamed(row.action);
}

/// What the list said then stands in no row: a missing end may be none, or nobody stated it.
bool may_be_asked(const ActionRow& row) {
  const bool is_half =
      row.action == ActionKind::milk_withheld || row.action == ActionKind::meat_withheld;
  const bool is_known = row.withdrawal == WithdrawalKnown::none || (row.milk_till && row.meat_till);
  return is_half || (is_given(row) && !is_known);
}

}  // namespace

std::map<CowId, std::vector<const ActionRow*>> acts_by_cow(const VisitView& view) {
  std::map<CowId, std::vector<const ActionRow*>> acts;
  for (const ActionRow& row : view.input.rows.actions) acts[row.cow].push_back(&row);
  for (auto& [cow, of_her] : acts) {
    std::sort(of_her.begin(), of_her.end(), [](const ActionRow* a, const ActionRow* b) {
      return std::tie(a->day, a->turn, a->position) < std::tie(b->day, b->turn, b->position);
    });
  }
  return acts;
}

std::vector<LeftToAsk> left_to_ask(const VisitView& view) {
  std::vector<LeftToAsk> left;
  for (const auto& [cow, acts] : acts_by_cow(view)) {
    const std::vector<SaidOf> said = withdrawals_said(acts);
    const CowRow* gone = who_left(view, cow);
    for (const ActionRow* row : acts) {
      const std::optional<HalfNotKnown> half = half_not_known(view, said, *row);
      if (gone != nullptr && is_no_longer_asked(*gone, half)) continue;
      if (half || is_withdrawal_open(acts, said, *row)) left.push_back({cow, row, half});
      FloorEnds floor = floor_ends(view, acts, said, *row);
      if (gone != nullptr) leave_what_is_asked(floor, *gone);
      if (floor.is_open()) left.push_back({cow, row, std::nullopt, floor});
    }
  }
  std::stable_sort(left.begin(), left.end(), [&](const LeftToAsk& a, const LeftToAsk& b) {
    return view.names.before(a.cow, b.cow);
  });
  return left;
}

void keep_what_may_be_asked(std::vector<ActionRow>& earlier, const std::set<VisitId>& whole,
                            Day today, const std::map<ProductId, std::int32_t>& below_floor) {
  const auto is_below_floor = [&](const ActionRow& row) {
    const auto floor = row.listed ? below_floor.find(*row.listed) : below_floor.end();
    return floor != below_floor.end() && today <= row.day + floor->second;
  };
  std::set<CowId> asked;
  for (const ActionRow& row : earlier) {
    if (may_be_asked(row) || is_below_floor(row)) asked.insert(row.cow);
  }
  std::erase_if(earlier, [&](const ActionRow& row) {
    const bool is_of_it = is_given(row) || tells_withdrawal(row.action);
    return whole.count(row.visit) == 0 && !(is_of_it && asked.count(row.cow) > 0);
  });
}

}  // namespace evenclaw
