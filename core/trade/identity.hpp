// Who is who: ids derived from what is known, so that two tablets agree without talking.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/base/date.hpp"
#include "core/base/id.hpp"

namespace evenclaw {

/// The number without leading zeros ("0412" is 412); "0" stays "0", and a zero before a letter
/// stays too, for it is no leading zero of a number.
std::string plain_number(std::string_view number);

/// Of the known numbers those that differ least from the one said, by at most one slip in three
/// digits: at most three of them, each once. The number itself is none of them.
std::vector<std::string> nearest_numbers(std::string_view said, std::vector<std::string> known);

/// "Did you mean 68 or 86?", "" when there is none.
std::string did_you_mean(const std::vector<std::string>& numbers);

/// A visit, from herd, day and which visit of that day it is (from 1).
VisitId visit_id(HerdId herd, Day day, int ordinal);

/// A numbered cow, from herd, plain number and the visit in which she is first seen.
CowId numbered_cow_id(HerdId herd, std::string_view number, VisitId first_seen);

/// A cow without a readable number: herd, visit, device, the words and which of that kind she is
/// (from 1). The words count byte for byte: two cows said a little differently are two cows.
CowId unnumbered_cow_id(HerdId herd, VisitId visit, DeviceId device, std::string_view looks,
                        int which);

/// A cow from a register or a reader, from herd, the strongest thing that identifies her (ear tag
/// before electronic number before herd number) and the first day it is known to be hers: two
/// tablets that read the same tag on one day mean the same cow.
CowId registered_cow_id(HerdId herd, std::string_view identifier, Day valid_from);

/// A task, from the entry that first made it and what it is: `what` names rule, kind, foot and claw
/// in one line. Whoever corrects that entry names the same task alike. (Logs also hold ids from an
/// entry and the position in it; they stay what they are.)
TaskId task_id(EntryId first, std::string_view what);

/// A routine trim, which no entry made, from the cow, the rule and the first day of its window.
TaskId routine_trim_id(CowId cow, std::string_view rule, Day from);

}  // namespace evenclaw
