// What was called at a visit as the lines that are typed beside the crush.
#pragma once

#include <string>
#include <vector>

#include "demo/called.hpp"

namespace evenclaw::demo {

/// Since last time first, then cow after cow, then "done". Who calls and which feet are lifted is
/// said when the visit is started. The lines are those of docs/format/call-line.md, in English.
std::vector<std::string> call_lines(const CalledVisit& visit);

/// The lines of one cow.
std::vector<std::string> call_lines(const CalledTurn& turn, const FootSet& todays_feet);

}  // namespace evenclaw::demo
