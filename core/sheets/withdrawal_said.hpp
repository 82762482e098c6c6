// Of which medicine it was meant what somebody said of her milk and meat.
#pragma once

#include <vector>

#include "core/trade/foot_rows.hpp"
#include "core/trade/medicine_use.hpp"

namespace evenclaw {

/// One telling ("milk 2d", "no withdrawal") and what it may be meant of.
struct SaidOf {
  const ActionRow* telling = nullptr;
  /// Every row of what it may be meant of: of one medicine, or of several where the order in which
  /// they were called does not tell; empty when none was called before it.
  std::vector<const ActionRow*> may_be_of;
  bool is_of_one = false;  // of one and the same medicine, or all of what was left open before
};

/// A telling is of the medicine that was called before it. What is put on a foot and what is given
/// to the cow stand apart in a record, so that of two of them nobody can tell which was first: then
/// it is of none of them for certain. Told at a later visit at which she was given nothing, it
/// answers all that was left open before. `acts` are of one cow in the order in which they were
/// done; the answer points into them.
std::vector<SaidOf> withdrawals_said(const std::vector<const ActionRow*>& acts);

/// The tellings that are meant of that medicine and of no other.
std::vector<const ActionRow*> said_of(const std::vector<SaidOf>& all, const ActionRow& row);

/// Of which of the two they speak; "no withdrawal" is of both.
MilkAndMeat milk_and_meat_of(const std::vector<const ActionRow*>& tellings);

/// Somebody has to be asked of it before milk or meat is sold: neither a list nor anybody said what
/// it holds back. `acts` are all of hers at that visit.
bool is_withdrawal_open(const std::vector<const ActionRow*>& acts, const std::vector<SaidOf>& said,
                        const ActionRow& row);

/// That act with the ends that hold: the later of what the list states of it and of what was told
/// and may be meant of it. Held back, where an end is told of it and nobody has to be asked.
ActionRow with_ends_that_hold(const std::vector<const ActionRow*>& acts,
                              const std::vector<SaidOf>& said, const ActionRow& row);

}  // namespace evenclaw
