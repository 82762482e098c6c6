// The vet asked for at an earlier visit: on which day, for what, and that nobody said he came.
#pragma once

#include <string>
#include <vector>

#include "core/sheets/visit_view.hpp"

namespace evenclaw {

/// What was seen and found where he was to look, on the day he was asked for: "outside claw: toe
/// ulcer (TU)"; else how she came, or in which words her turn was not done. What is known to be
/// gone since is left out; "" when nothing is left or known. `then`: at least her turns, feet,
/// findings and actions of that visit; `cases`: at least hers.
std::string vet_asked_for_what(const TaskRow& task, const Rows& then,
                               const std::vector<CaseRow>& cases, const Wording& wording);

/// What of it is to be left alone until he came. Not of blood and a fall, which are over by the
/// next visit; the rows as above.
std::vector<LeftAlone> left_until_vet(const TaskRow& task, const Rows& then,
                                      const std::vector<CaseRow>& cases);

/// "the vet was asked for on Tue 17 Nov for toe ulcer; nobody said whether he came"; of pain relief
/// likewise.
std::string asked_before_words(const VisitView& view, const TaskRow& task);

}  // namespace evenclaw
