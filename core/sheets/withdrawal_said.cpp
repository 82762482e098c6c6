#include "core/sheets/withdrawal_said.hpp"

#include <algorithm>
#include <iterator>
#include <optional>
#include <string>
#include <utility>

namespace evenclaw {

namespace {

using Acts = std::vector<const ActionRow*>;

bool may_hold_back(const ActionRow& row) {
  return is_medicine_act(row.action) || is_given_unnamed(row.action);
}

/// The same product, whatever it was put on; without a name the same act.
bool is_same_medicine(const ActionRow& a, const ActionRow& b) {
  const bool is_named = !a.product.empty() || !b.product.empty();
  return is_named ? a.product == b.product : a.action == b.action;
}

/// "By the vet's plan" tells how it came that something was given or injected, where that is named;
/// what is put on a foot stands beside a plan and is not what was given by it (our judgement).
bool is_plan_of_another(const Acts& acts, const ActionRow& row) {
  return row.action == ActionKind::vet_plan &&
         std::any_of(acts.begin(), acts.end(), [&](const ActionRow* other) {
           const bool is_of_all_of_her =
               other->action == ActionKind::given || other->action == ActionKind::injected;
           return other->turn == row.turn && is_of_all_of_her;
         });
}

bool is_certain_of(const std::vector<SaidOf>& said, const ActionRow& row) {
  return std::any_of(said.begin(), said.end(), [&](const SaidOf& one) {
    return one.is_of_one && one.telling->turn == row.turn &&
           is_same_medicine(*one.may_be_of.front(), row);
  });
}

/// "Milk 2d, meat 5d": what follows one telling at once is said of the same.
const SaidOf* just_said(const Acts& acts, const std::vector<SaidOf>& said, std::size_t at) {
  const bool follows = !said.empty() && at > 0 && acts[at - 1] == said.back().telling &&
                       acts[at - 1]->turn == acts[at]->turn;
  return follows ? &said.back() : nullptr;
}

/// The last that was given to the cow in that turn before the telling, and all that was put on her
/// feet in it: of these the order is not known.
Acts called_before(const Acts& acts, const std::vector<SaidOf>& said, std::size_t at) {
  const ActionRow& telling = *acts[at];
  Acts before;
  const ActionRow* last_given = nullptr;
  for (std::size_t i = 0; i < at; ++i) {
    const ActionRow& row = *acts[i];
    const bool is_meant =
        row.turn == telling.turn && may_hold_back(row) && !is_plan_of_another(acts, row);
    if (!is_meant) continue;
    if (!row.foot) {
      last_given = &row;
    } else if (!is_certain_of(said, row)) {
      before.push_back(&row);
    }
  }
  if (last_given != nullptr) before.push_back(last_given);
  return before;
}

/// Said in a turn of its own, it is of what was given in those before it.
Acts called_earlier(const Acts& acts, const std::vector<SaidOf>& said, std::size_t at) {
  Acts earlier;
  for (std::size_t i = 0; i < at; ++i) {
    const bool is_meant = acts[i]->visit == acts[at]->visit && may_hold_back(*acts[i]) &&
                          !is_plan_of_another(acts, *acts[i]) && !is_certain_of(said, *acts[i]);
    if (is_meant) earlier.push_back(acts[i]);
  }
  return earlier;
}

bool is_answered(const std::vector<SaidOf>& said, const ActionRow& row) {
  const bool is_listed =
      row.withdrawal == WithdrawalKnown::none || (row.milk_till && row.meat_till);
  const MilkAndMeat told = milk_and_meat_of(said_of(said, row));
  return is_listed || (told.milk && told.meat);
}

/// Said at a later visit, of a cow who was given nothing at it, it answers what was left open.
Acts left_open_before(const Acts& acts, const std::vector<SaidOf>& said, std::size_t at) {
  Acts open;
  for (std::size_t i = 0; i < at; ++i) {
    const bool is_meant = acts[i]->visit != acts[at]->visit && may_hold_back(*acts[i]) &&
                          !is_plan_of_another(acts, *acts[i]) && !is_answered(said, *acts[i]);
    if (is_meant) open.push_back(acts[i]);
  }
  return open;
}

/// A time is not said again of what the list states already; that there is none may be.
void leave_out_listed(Acts& rows, const ActionRow& telling) {
  if (telling.action == ActionKind::no_withdrawal) return;
  Acts open;
  std::copy_if(rows.begin(), rows.end(), std::back_inserter(open), [](const ActionRow* row) {
    return row->withdrawal == WithdrawalKnown::not_known ||
           row->withdrawal == WithdrawalKnown::no_medicine;
  });
  if (!open.empty()) rows = std::move(open);
}

bool is_one_medicine(const Acts& rows) {
  return !rows.empty() && std::all_of(rows.begin(), rows.end(), [&](const ActionRow* row) {
    return is_same_medicine(*rows.front(), *row);
  });
}

/// What the act at `at` tells of, behind all that was said before it.
SaidOf said_at(const Acts& acts, const std::vector<SaidOf>& said, std::size_t at) {
  SaidOf one;
  if (const SaidOf* before = just_said(acts, said, at)) {
    one = *before;
    one.telling = acts[at];
    return one;
  }
  one.telling = acts[at];
  one.may_be_of = called_before(acts, said, at);
  if (one.may_be_of.empty()) one.may_be_of = called_earlier(acts, said, at);
  leave_out_listed(one.may_be_of, *acts[at]);
  one.is_of_one = is_one_medicine(one.may_be_of);
  if (one.may_be_of.empty()) {
    one.may_be_of = left_open_before(acts, said, at);
    one.is_of_one = !one.may_be_of.empty();
  }
  return one;
}

/// Without a milking an end means the whole day.
std::optional<MilkEnd> milk_end(const ActionRow& row) {
  if (!row.milk_till) return std::nullopt;
  return MilkEnd{*row.milk_till, row.milk_milking.value_or(Milking::evening)};
}

void put_later(ActionRow& row, const ActionRow& telling) {
  if (milk_end(telling) > milk_end(row)) {
    row.milk_till = telling.milk_till;
    row.milk_milking = telling.milk_milking;
  }
  row.meat_till = std::max(row.meat_till, telling.meat_till);
}

}  // namespace

std::vector<SaidOf> withdrawals_said(const Acts& acts) {
  std::vector<SaidOf> said;
  for (std::size_t at = 0; at < acts.size(); ++at) {
    if (tells_withdrawal(acts[at]->action)) said.push_back(said_at(acts, said, at));
  }
  return said;
}

Acts said_of(const std::vector<SaidOf>& all, const ActionRow& row) {
  Acts tellings;
  for (const SaidOf& one : all) {
    const bool is_of_it = one.is_of_one && std::find(one.may_be_of.begin(), one.may_be_of.end(),
                                                     &row) != one.may_be_of.end();
    if (is_of_it) tellings.push_back(one.telling);
  }
  return tellings;
}

MilkAndMeat milk_and_meat_of(const Acts& tellings) {
  MilkAndMeat of;
  for (const ActionRow* row : tellings) {
    of.milk = of.milk || row->action != ActionKind::meat_withheld;
    of.meat = of.meat || row->action != ActionKind::milk_withheld;
  }
  return of;
}

bool is_withdrawal_open(const Acts& acts, const std::vector<SaidOf>& said, const ActionRow& row) {
  const bool is_open = row.withdrawal == WithdrawalKnown::not_known ||
                       (is_given_unnamed(row.action) && !is_plan_of_another(acts, row));
  return is_open && said_of(said, row).empty();
}

ActionRow with_ends_that_hold(const Acts& acts, const std::vector<SaidOf>& said,
                              const ActionRow& row) {
  ActionRow held = row;
  for (const SaidOf& one : said) {
    const auto& of = one.may_be_of;
    if (std::find(of.begin(), of.end(), &row) != of.end()) put_later(held, *one.telling);
  }
  const bool has_end = held.milk_till || held.meat_till;
  if (has_end && !is_withdrawal_open(acts, said, row)) held.withdrawal = WithdrawalKnown::held_back;
  return held;
}

}  // namespace evenclaw
