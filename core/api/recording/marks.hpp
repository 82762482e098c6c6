// What was not called about a finding: a mark on the line, never an alarm.
#pragma once

#include <string>
#include <vector>

#include "core/trade/turn.hpp"

namespace evenclaw {

/// "place, degree not called (left hind white line abscess)", one per finding that lacks something.
std::vector<std::string> marks_of(const Turn& turn);

}  // namespace evenclaw
