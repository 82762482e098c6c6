// What is still to be asked when a visit ends, as text for a terminal.
#pragma once

#include <string>
#include <vector>

#include "core/api/visits.hpp"

namespace evenclaw::cli {

/// One line a point, the cow in front where there is one.
std::string open_points_text(const std::vector<OpenPoint>& points);

/// How such points are answered once the visit is over; "" when no command answers them.
std::string how_to_answer(const std::vector<OpenPoint>& points, Day visit_day);

}  // namespace evenclaw::cli
