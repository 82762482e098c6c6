// What is on record of the farm itself, as text for the terminal.
#pragma once

#include <string>

#include "core/api/show.hpp"
#include "core/base/date.hpp"

namespace evenclaw::cli {

/// "scored 3 on the scale 0 to 3, lame LH (2 days after a trim)".
std::string score_text(const MobilityScoreRow& row);

/// The scorings, walks and changes of a herd, newest first; "" when there are none.
std::string farm_text(const HerdShown& shown, Day today);

}  // namespace evenclaw::cli
