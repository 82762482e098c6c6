// Cases: the same lesion at the same place of a foot followed through time.
#pragma once

#include <vector>

#include "core/log/cow_story.hpp"
#include "core/trade/foot_rows.hpp"

namespace evenclaw {

/// Gives every finding its case and step, and returns the cases. `findings` are all those of the
/// story's turns, in any order.
///
/// Findings of one family (core/trade/lesion.hpp) on the same foot, claw and place are one case.
/// Where the place was not called and two names tie the lesion to different parts of the claw, they
/// are not one case. Where claw or place was not called, on either side, the finding joins the
/// single open case it fits, if there is exactly one that no finding of the same turn has taken;
/// else it opens its own. A lesion that takes no claw is followed without regard to the claw.
/// Findings named by words only are one case when the words are the same. A case remembers the
/// worst name it was called by, and whether it got there from a milder one.
///
/// A case is open until a later visit looks at that foot and does not find it. A foot that was
/// lifted with nothing said of findings, or in an unfinished turn with other findings, was not
/// looked at in that sense: silence is never "nothing found". Found again later it is a new case,
/// a relapse.
std::vector<CaseRow> link_cases(const CowStory& story, std::vector<FindingRow>& findings);

}  // namespace evenclaw
