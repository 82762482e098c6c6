// The tasks that hold milk and meat back until the end that was stated.
#pragma once

#include <optional>
#include <vector>

#include "core/trade/medicine.hpp"
#include "core/trade/task.hpp"
#include "core/trade/turn.hpp"

namespace evenclaw {

/// The latest end of milk and of meat among all medicines of a turn and what was told by mouth;
/// nothing where nothing is held back.
struct WithdrawalEnds {
  std::optional<MilkEnd> milk;
  std::optional<Day> meat;
};

/// The ends that one act states.
WithdrawalEnds withdrawal_ends(const Action& action, Day visit_day);

/// An end told by mouth without a milking means the whole day. It never shortens what the list
/// states.
WithdrawalEnds withdrawal_ends(const Turn& turn, Day visit_day);

/// "last milk held back: Thu 29 Oct evening; marked with paint": a task for the milk and one for
/// the meat, in force from the visit on, due on their last day; without ids.
std::vector<TaskMade> withdrawal_tasks(const Turn& turn, Day visit_day);

}  // namespace evenclaw
