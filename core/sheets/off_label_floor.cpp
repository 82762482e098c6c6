#include "core/sheets/off_label_floor.hpp"

#include <algorithm>

#include "core/trade/follow_up_rules.hpp"
#include "core/trade/medicine_rules.hpp"

namespace evenclaw {

namespace {

constexpr std::int32_t hours_a_day = 24;

std::string time_words(std::int32_t hours) {
  const bool whole_days = hours % hours_a_day == 0;
  return spoken(whole_days ? WithdrawalStated{hours / hours_a_day, WithdrawalUnit::days}
                           : WithdrawalStated{hours, WithdrawalUnit::hours});
}

/// Whatever the day.
FloorEnds lawful_ends(const VisitView& view, const std::vector<const ActionRow*>& acts,
                      const std::vector<SaidOf>& said, const ActionRow& row) {
  const ProductStated* stated = stated_of(view, row);
  if (stated == nullptr) return {};
  const ActionRow held = with_ends_that_hold(acts, said, row);
  const LeastNotReached& floor = stated->floor;
  FloorEnds ends;
  if (floor.milk_hours) {
    const auto end = milk_end({*floor.milk_hours, WithdrawalUnit::hours}, row.day);
    const bool is_told =
        held.milk_till &&
        MilkEnd{*held.milk_till, held.milk_milking.value_or(Milking::evening)} >= end;
    if (end && !is_told) ends.milk = end;
  }
  if (floor.meat_days) {
    const Day end = row.day + *floor.meat_days;
    const bool is_told = held.meat_till && *held.meat_till >= end;
    if (!is_told) ends.meat = end;
  }
  return ends;
}

}  // namespace

LeastNotReached least_not_reached(const Product& product, std::string_view country) {
  if (product.labelled != Labelled::no) return {};
  const LeastWithdrawal least = least_withdrawal(product, country);
  LeastNotReached missed;
  if (product.milk && hours_of(*product.milk) < least.milk_hours) {
    missed.milk_hours = least.milk_hours;
  }
  if (product.meat_days && *product.meat_days < least.meat_days) {
    missed.meat_days = least.meat_days;
  }
  return missed;
}

FloorEnds floor_ends(const VisitView& view, const std::vector<const ActionRow*>& acts,
                     const std::vector<SaidOf>& said, const ActionRow& row) {
  FloorEnds ends = lawful_ends(view, acts, said, row);
  const Day today = view.input.printed;
  if (ends.milk && ends.milk->day < today) ends.milk = std::nullopt;
  if (ends.meat && *ends.meat < today) ends.meat = std::nullopt;
  return ends;
}

ActionRow with_lawful_ends(const VisitView& view, const std::vector<const ActionRow*>& acts,
                           const std::vector<SaidOf>& said, const ActionRow& row) {
  ActionRow held = with_ends_that_hold(acts, said, row);
  const FloorEnds floor = lawful_ends(view, acts, said, row);
  if (floor.milk) {
    held.milk_till = floor.milk->day;
    held.milk_milking = floor.milk->milking;
  }
  if (floor.meat) held.meat_till = floor.meat;
  if (floor.is_open()) held.withdrawal = WithdrawalKnown::held_back;
  return held;
}

std::string floor_end(const VisitView& view, ActionKind of, const FloorEnds& floor) {
  ActionRow end;
  end.action = of;
  if (of == ActionKind::milk_withheld) {
    end.milk_till = floor.milk->day;
    end.milk_milking = floor.milk->milking;
  } else {
    end.meat_till = floor.meat;
  }
  return view.wording.act(end, view.input.visit.day);
}

std::string later_floor(const VisitView& view, const TaskRow& told, const FloorEnds& floor) {
  const bool is_milk = told.rule == milk_withdrawal_rule.slug;
  const bool is_later =
      is_milk ? floor.milk && floor.milk->day >= told.due : floor.meat && *floor.meat > told.due;
  if (!is_later) return {};
  return floor_end(view, is_milk ? ActionKind::milk_withheld : ActionKind::meat_withheld, floor);
}

FloorEnds floor_ends_of(const VisitView& view, const std::vector<const ActionRow*>& acts) {
  const std::vector<SaidOf> said = withdrawals_said(acts);
  FloorEnds latest;
  for (const ActionRow* row : acts) {
    const FloorEnds ends = floor_ends(view, acts, said, *row);
    latest.milk = std::max(latest.milk, ends.milk);
    latest.meat = std::max(latest.meat, ends.meat);
  }
  return latest;
}

std::string floor_words(const VisitView& view, const ActionRow& row, const FloorEnds& ends) {
  const ProductStated* stated = stated_of(view, row);
  if (stated == nullptr || !ends.is_open()) return {};
  const Wording& wording = view.wording;
  std::vector<std::string> least;
  std::vector<std::string> till;
  const auto add = [&](BoxSaying saying, std::int32_t hours, ActionKind of) {
    least.push_back(wording.say(saying, {{"time", time_words(hours)}}));
    till.push_back(floor_end(view, of, ends));
  };
  if (ends.milk)
    add(BoxSaying::least_of_milk, *stated->floor.milk_hours, ActionKind::milk_withheld);
  if (ends.meat) {
    add(BoxSaying::least_of_meat, *stated->floor.meat_days * hours_a_day,
        ActionKind::meat_withheld);
  }
  const std::string floor = wording.say(
      BoxSaying::below_the_floor, {{"least", wording.list(least)}, {"ends", wording.list(till)}});
  return clauses({floor, wording.say(BoxSaying::floor_ask_the_vet)});
}

std::string with_floor_told(const VisitView& view, const std::vector<const ActionRow*>& acts,
                            const ActionRow& row, const std::string& stated) {
  const FloorEnds floor = floor_ends(view, acts, withdrawals_said(acts), row);
  return floor.is_open() ? clauses({stated, floor_words(view, row, floor)}) : stated;
}

}  // namespace evenclaw
