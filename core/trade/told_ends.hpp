// An end of withdrawal that was told by mouth beside one that the herd's list states: the later of
// the two holds, and every page tells that one.
#pragma once

#include <string>
#include <vector>

#include "core/trade/foot_rows.hpp"
#include "core/trade/turn.hpp"

namespace evenclaw {

/// "milk told till Mon 30 Nov, the list states Wed 2 Dec: the later holds": what was told of milk
/// and of meat and ends before what the list states; or that none was told at all.
std::vector<std::string> told_shorter_than_listed(const Turn& turn, Day visit_day);

/// What was told by mouth ends no sooner than what else holds her milk or meat back by its turn,
/// and "no withdrawal" is no row beside what the list holds back.
void let_later_ends_hold(std::vector<ActionRow>& rows);

}  // namespace evenclaw
