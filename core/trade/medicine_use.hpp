// The medicines of a turn: which acts are of one, what the list says of them, what is told by
// mouth.
#pragma once

#include <string>
#include <vector>

#include "core/trade/medicine_rules.hpp"
#include "core/trade/turn.hpp"

namespace evenclaw {

/// Something is put on or given that may hold back milk or meat.
bool is_medicine_act(ActionKind kind);

/// Given without a name, so that no list can say how long: it is told by mouth, or nobody said.
bool is_given_unnamed(ActionKind kind);

/// The withdrawal is told by mouth: till a time, or that there is none.
bool tells_withdrawal(ActionKind kind);

/// Of which of the two something is known.
struct MilkAndMeat {
  bool milk = false;
  bool meat = false;
};

/// What is told by mouth in the whole turn; "no withdrawal" is of both.
MilkAndMeat withdrawal_told(const Turn& turn);

/// What is told by mouth in that turn and may be meant of that act of it: of something given to the
/// cow only what was told after it. What was put on a foot stands apart in a turn, and nobody can
/// tell what came first.
MilkAndMeat withdrawal_told_of(const Turn& turn, const Action& action);

/// The turn with what the list says of every product it names. What is known of one already stays
/// as it is, and a name that is not on the list stays as it was said.
Turn with_medicines(Turn turn, const MedicineRules& rules, Day visit_day);

/// The turn with every end of withdrawal counted from that day, by what the list stated then: for a
/// visit that stood under a wrong day.
Turn with_ends_counted_from(Turn turn, Day right_day);

/// Milk and meat withdrawal are both stated, be it as none.
bool is_withdrawal_stated(const Action& action);

/// What a row of it says.
WithdrawalKnown withdrawal_known(const Action& action);

/// The names of all products said in a turn, each once; a form without a name by its word: "spray".
std::vector<std::string> products_said(const Turn& turn);

/// The name it goes by: the product, else the word of the act.
std::string product_or_act(const Action& action);

}  // namespace evenclaw
